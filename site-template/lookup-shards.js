// What the files of the lookup index say: texts folded for comparing, shards loaded one by one, keys, lists and
// records decoded. lookup.js searches in them. The format is described in the command line's twin of this code
// (generator/Crossref.Core/Lookup/IndexFormat.cs); a change here needs the same change there, and the tests
// compare the two.
//
// Classic scripts with one global: a page opened from a file may load nothing but classic scripts, so every
// shard is one that calls crossrefLookup(name, text).
(() => {
  "use strict";

  const LONGEST_TEXT = 200;
  const LONGEST_WORD = 40;
  const DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_";
  const DIGIT = new Uint8Array(128);
  [...DIGITS].forEach((c, i) => { DIGIT[c.charCodeAt(0)] = i; });

  // ---- text -------------------------------------------------------------------------------------------------

  // The letters U+00C0 to U+017F in order: what each becomes, and how many in a row become the same.
  const LATIN = ("a6 ae1 c1 e4 i4 d1 n1 o5 x1 o1 u4 y1 th1 ss1 a6 ae1 c1 e4 i4 d1 n1 o5 -1 o1 u4 y1 th1 y1 "
    + "a6 c8 d4 e10 g8 h4 i10 ij2 j2 k3 l10 n9 o6 oe2 r6 s8 t6 u12 w2 y3 z6 s1").split(" ").flatMap((run) => {
    const [, letters, count] = /^(\D+)(\d+)$/.exec(run);
    return Array(Number(count)).fill(letters === "-" ? " " : letters);
  });
  const JOINED = /[\u0300-\u036f\u00ad\u200b-\u200d\ufeff]/;
  const LETTER = /[\u0180-\u02ff\u0370-\u1fff\u2c00-\u2dff\u3040-\udfff\uf900-\ufdff\ufe70-\ufefe]/;
  const OTHERS = { "\u00b2": "2", "\u00b3": "3", "\u00b9": "1", "\u00b5": "u" };

  function foldOne(c) {
    const code = c.charCodeAt(0);
    if (code < 0x80) return /[0-9a-z]/.test(c) ? c : /[A-Z]/.test(c) ? String.fromCharCode(code + 32) : " ";
    if (code >= 0xc0 && code <= 0x17f) return LATIN[code - 0xc0];
    if (OTHERS[c]) return OTHERS[c];
    if (code >= 0xff01 && code <= 0xff5e) return foldOne(String.fromCharCode(code - 0xfee0));
    if (JOINED.test(c)) return "";
    return LETTER.test(c) ? String.fromCharCode(lower(code)) : " ";
  }

  function lower(code) {
    if (code === 0x3c2) return 0x3c3; // the sigma that ends a word
    if (code >= 0x391 && code <= 0x3a9 && code !== 0x3a2) return code + 32;
    if (code >= 0x410 && code <= 0x42f) return code + 32;
    if (code >= 0x400 && code <= 0x40f) return code + 80;
    return code >= 0x531 && code <= 0x556 ? code + 48 : code;
  }

  // By characters of UTF-16, not by code points, as the other reader does.
  const fold = (text) => text.split("").map(foldOne).join("");
  const words = (text) => fold(text).split(" ").filter(Boolean).map((word) => word.slice(0, LONGEST_WORD));
  const numberForm = (text) => fold(text).replace(/ /g, "").slice(0, LONGEST_TEXT)
    .replace(/[a-z]/g, (c) => (c === "o" ? "0" : c === "i" || c === "l" ? "1" : c.toUpperCase()));
  const tidy = (text) => text.replace(/[\0-\x20\x7f-\xa0\u2000-\u200a\u2028\u2029\u202f\u3000]+/g, " ")
    .replace(/^ /, "").slice(0, LONGEST_TEXT).replace(/ $/, "");
  const reverse = (text) => text.split("").reverse().join("");
  const compare = (x, y) => (x < y ? -1 : x > y ? 1 : 0);

  // The one slip of the keys between what was typed and a number; empty when there is none or more than one.
  function slipBetween(typed, number) {
    const least = Math.min(typed.length, number.length);
    let front = 0;
    while (front < least && typed[front] === number[front]) front++;
    let back = 0;
    while (back < least - front && typed[typed.length - 1 - back] === number[number.length - 1 - back]) back++;
    const rests = `${typed.length - front - back},${number.length - front - back}`;
    if (rests === "1,1") return "one character differs from";
    if (rests === "0,1") return "one character less than";
    if (rests === "1,0") return "one character more than";
    return rests === "2,2" && typed[front] === number[front + 1] && typed[front + 1] === number[front]
      ? "two characters swapped in" : "";
  }

  // ---- shards -----------------------------------------------------------------------------------------------

  const arrived = new Map();

  function loadScript(root, name) {
    return new Promise((resolve, reject) => {
      const script = document.createElement("script");
      const end = () => {
        script.remove();
        const text = arrived.get(name);
        arrived.delete(name);
        if (text === undefined) reject(new Error(`The file lookup/${name}.js is missing or damaged; copy or build the site again.`));
        else resolve(text);
      };
      script.onload = end;
      script.onerror = end;
      script.src = `${root}lookup/${name}.js`;
      document.head.append(script);
    });
  }

  class Store {
    constructor(root, most) {
      this.root = root;
      this.most = most;
      this.kept = new Map(); // by name, least recently used first
    }

    shard(table, number, decode) {
      const name = `${table}/${number >> 8}/${(number & 255).toString(16).padStart(2, "0")}`;
      let items = this.kept.get(name);
      this.kept.delete(name);
      if (!items) {
        items = loadScript(this.root, name).then(decode);
        // A failed load may succeed later: a stick pulled and put back.
        items.catch(() => this.kept.delete(name));
        if (this.kept.size >= this.most) this.kept.delete(this.kept.keys().next().value);
      }
      this.kept.set(name, items);
      return items;
    }
  }

  function decodeRows(text) {
    let key = "";
    const keys = [];
    const values = [];
    for (const row of text.split(" ")) {
      const comma = row.indexOf(",");
      key = key.slice(0, DIGIT[row.charCodeAt(0)]) + row.slice(1, comma);
      keys.push(key);
      values.push(row.slice(comma + 1));
    }
    return { keys, values };
  }

  function lowerBound(sorted, key) {
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sorted[middle] < key) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  class Table {
    constructor(name, firstKeys, store) {
      Object.assign(this, { name, firstKeys, store });
    }

    // Visits (key, value) of the rows whose keys start with a text, until the visitor answers false.
    async walk(start, visit) {
      for (let shard = Math.max(lowerBound(this.firstKeys, start) - 1, 0); shard < this.firstKeys.length; shard++) {
        const { keys, values } = await this.store.shard(this.name, shard, decodeRows);
        for (let i = lowerBound(keys, start); i < keys.length; i++) {
          if (!keys[i].startsWith(start) || visit(keys[i], values[i]) === false) return;
        }
      }
    }

    walkKey(key, visit) {
      return this.walk(key, (met, value) => met.length === key.length && visit(met, value));
    }
  }

  class Numerals {
    constructor(text) {
      this.text = text;
      this.at = 0;
    }

    get more() { return this.at < this.text.length; }

    next() {
      let value = 0;
      for (let shift = 0; ; shift += 5) {
        const digit = DIGIT[this.text.charCodeAt(this.at++)];
        value |= (digit & 31) << shift;
        if (digit < 32 || !this.more) return value;
      }
    }
  }

  // Visits (level, entry) of a list of postings, until the visitor answers false.
  function eachPosting(numerals, visit) {
    while (numerals.more) {
      const level = numerals.next();
      let entry = 0;
      for (let left = numerals.next(); left > 0; left--) {
        entry += numerals.next();
        if (visit(level, entry) === false) return false;
      }
    }
    return true;
  }

  // ---- records ----------------------------------------------------------------------------------------------

  function decodeRecord(line) {
    const [type, id, title, page, detail, kind, standing, ...marked] = line.split("\t");
    const record = { type, id, title, page, detail, kind: kind || null, standing: standing || null, families: [], numbers: [] };
    for (const field of marked) {
      const text = field.slice(1);
      if (field[0] === "f") record.families.push(text);
      else if (field[0] === "m") record.numbers[record.numbers.length - 1].maker = text;
      else record.numbers.push({ role: Number(field[0]), text, maker: null });
    }
    return record;
  }

  // ---- the one global ---------------------------------------------------------------------------------------

  window.crossrefLookup = Object.assign((name, text) => { arrived.set(name, text); }, {
    parts: {
      words, numberForm, tidy, reverse, compare, slipBetween, loadScript, Store, Table, Numerals, eachPosting,
      decodeRows, decodeRecord, lowerBound,
    },
    fold,
    numberForm,
  });
})();
