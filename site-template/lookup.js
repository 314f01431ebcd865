// Finds entries in the lookup index, reading only the shards a query needs (lookup-shards.js). Answers exactly
// like the command line's reader (generator/Crossref.Core/Lookup/): same hits, order, reasons and scores.
(() => {
  "use strict";

  const {
    words, numberForm, tidy, reverse, compare, slipBetween, loadScript, Store, Table, Numerals, eachPosting,
    decodeRows, decodeRecord, lowerBound,
  } = window.crossrefLookup.parts;

  const VERSION = "1";
  const SMALL = 1 << 20; // an index up to this many bytes may be held in memory whole
  const SHARDS_KEPT = 48; // decoded, a quarter of a megabyte each
  const WALK = 50000; // postings visited in one walk along a table
  const BEGINNINGS = 40; // words that the beginning of one stands for
  const MOST_TERMS = 12;
  const STEP = 100000; // between two tiers of a score
  const TIER = { words: 1, typo: 2, middle: 3, prefix: 4, exact: 5 };
  const ROLE = { number: 0, also: 1, earlier: 2, generic: 3, id: 4 };
  const FILTERS = ["type", "kind", "family", "standing"];
  const TABLES = ["numbers", "inner", "words", "records", "reversed", "more", "filters"];
  const decodeLines = (text) => text.split("\n");

  function termsOf(text) {
    return text.split(" ").filter(numberForm).slice(0, MOST_TERMS).map((typed, i, all) => {
      const its = words(typed);
      return { typed, form: its.some((word) => /[0-9]/.test(word)) ? numberForm(typed) : "", words: its, begun: i === all.length - 1 };
    });
  }

  const compareNumbers = (x, y) => y.tier - x.tier || compare(x.key, y.key) || x.role - y.role;
  const compareMatches = (x, y) => y.score - x.score
    || compare(x.lead ? x.lead.key : "", y.lead ? y.lead.key : "")
    || (x.lead ? x.lead.role : 0) - (y.lead ? y.lead.role : 0)
    || x.entry - y.entry;

  class Reader {
    constructor(root, lines) {
      // A large index keeps what a few queries need; a small one all there is.
      const store = new Store(root, Number(lines[0][3]) <= SMALL ? Infinity : SHARDS_KEPT);
      const tables = new Map(lines.filter((line) => line[0] === "table")
        .map(([, name, keys]) => [name, new Table(name, keys.split(" ").filter(Boolean), store)]));
      for (const name of TABLES) {
        this[name] = tables.get(name) || new Table(name, [], store);
      }
      this.store = store;
      this.entries = Number(lines[0][2]);
      this.bytes = Number(lines[0][3]);
      this.firsts = this.records.firstKeys.map(Number);
      this.filterValues = lines.filter((line) => line[0] === "filter")
        .map(([, filter, value, count]) => ({ filter, value, count: Number(count) }));
    }

    get isSmall() { return this.bytes <= SMALL; }

    // Loads every shard, so that each keystroke answers from memory; only when the index is small.
    async loadAll() {
      if (!this.isSmall) return;
      for (const name of TABLES) {
        for (let i = 0; i < this[name].firstKeys.length; i++) {
          await this.store.shard(name, i, name === "records" ? decodeLines : decodeRows);
        }
      }
    }

    // The matches of a query {text, limit, type, kind, family, standing}, best first; see row().
    async match(query) {
      const text = tidy(query.text || "");
      const limit = query.limit || 50;
      const allowed = await this.allowed(query);
      if (!text) return browse(query, allowed, limit);
      const form = numberForm(text);
      if (!form) return [];
      const best = new Map();
      for (const [entry, number] of await this.wholeNumber(form, text, allowed, limit)) {
        best.set(entry, { entry, score: number.tier * STEP, lead: number, numbers: [number], words: [] });
      }
      const terms = termsOf(text);
      if (terms.length > 1 || best.size < limit) {
        for (const match of await this.byTerms(terms, allowed, limit)) {
          const before = best.get(match.entry);
          if (!before || compareMatches(match, before) < 0) best.set(match.entry, match);
        }
      }
      return [...best.values()].sort(compareMatches).slice(0, limit);
    }

    // What a result line shows of a match.
    async row(match) {
      const shard = lowerBound(this.firsts, match.entry + 1) - 1;
      const lines = await this.store.shard("records", shard, decodeLines);
      const record = decodeRecord(lines[match.entry - this.firsts[shard]]);
      const { type, id, title, page, detail, kind, families, standing } = record;
      const why = match.why || reasonFor(match, record);
      return { type, id, title, why, score: match.score, page, detail, kind, families, standing };
    }

    async find(query) {
      return Promise.all((await this.match(query)).map((match) => this.row(match)));
    }

    async allowed(query) {
      let allowed = null;
      for (const name of FILTERS.filter((filter) => query[filter])) {
        const marks = new Uint8Array(this.entries);
        await this.filters.walkKey(`${name}=${words(query[name]).join("-")}`, (key, value) => {
          const numerals = new Numerals(value);
          for (let end = 0; numerals.more;) {
            const first = end + numerals.next();
            end = first + numerals.next();
            marks.fill(1, first, end);
          }
        });
        allowed = allowed ? allowed.map((mark, i) => mark & marks[i]) : marks;
      }
      return allowed;
    }

    // The query as one number, with its spaces taken for separators.
    async wholeNumber(form, typed, allowed, limit) {
      const found = await this.byNumber(form, typed, allowed, limit);
      if (found.size < limit) {
        for (const [entry, match] of await this.bySlip(form, typed, allowed)) {
          if (!found.has(entry)) found.set(entry, match);
        }
      }
      return found;
    }

    // Numbers that are, start with or contain a form, met in the order of their rank.
    async byNumber(form, typed, allowed, limit) {
      const found = new Map();
      const collect = (table, tierOf) => {
        let walked = 0;
        return table.walk(form, (key, value) => eachPosting(new Numerals(value), (role, entry) => {
          walked++;
          const tier = tierOf(key, role);
          if (tier && (!allowed || allowed[entry])) {
            if (!found.has(entry)) found.set(entry, { tier, key, role, form, typed });
            if (found.size >= limit) return false;
          }
          return true;
        }) && walked < WALK);
      };
      await collect(this.numbers, (key, role) => (key.length === form.length ? TIER.exact + ROLE.id - role
        : role === ROLE.id ? 0 : TIER.prefix));
      if (form.length >= 3 && found.size < limit) await collect(this.inner, () => TIER.middle);
      return found;
    }

    // Numbers one slip away. A slip leaves one half of the form whole, unless it swaps the two in the middle.
    async bySlip(form, typed, allowed) {
      const found = new Map();
      if (form.length < 4) return found;
      const keep = (key, value) => eachPosting(new Numerals(value), (role, entry) => {
        if (role === ROLE.id || (allowed && !allowed[entry])) return;
        const match = { tier: TIER.typo, key, role, form, typed };
        const before = found.get(entry);
        if (!before || compareNumbers(match, before) < 0) found.set(entry, match);
      });
      const visit = (numberOf) => {
        let walked = 0;
        return (key, value) => {
          if (Math.abs(key.length - form.length) <= 1) {
            const number = numberOf(key);
            if (slipBetween(form, number)) keep(number, value);
          }
          return ++walked < WALK;
        };
      };
      const half = form.length >> 1;
      await this.numbers.walk(form.slice(0, half), visit((key) => key));
      await this.reversed.walk(reverse(form.slice(half)), visit(reverse));
      await this.numbers.walkKey(
        form.slice(0, half - 1) + form[half] + form[half - 1] + form.slice(half + 1), visit((key) => key));
      return found;
    }

    // Entries that answer as many terms as any does; overflow is read only when too few come without.
    async byTerms(terms, allowed, enough) {
      const found = [];
      const cut = { is: false };
      for (const term of terms) found.push(await this.byTerm(term, terms.length > 1, allowed, false, cut));
      const { matches, isAll } = combine(found, this.entries);
      if (!cut.is || (isAll && matches.length >= enough)) return matches;
      // Some entry answers every term, so only such entries count, and each term leaves fewer for the next:
      // the rarest goes first.
      let left = allowed;
      for (const i of terms.map((_, index) => index).sort((x, y) => found[x].size - found[y].size)) {
        found[i] = await this.byTerm(terms[i], terms.length > 1, left, true, cut);
        if (isAll) {
          left = new Uint8Array(this.entries);
          for (const entry of found[i].keys()) left[entry] = 1;
        }
      }
      return combine(found, this.entries).matches;
    }

    async byTerm(term, byNumber, allowed, deep, cut) {
      const found = await this.byWords(term, allowed, deep, cut);
      // A single term has been looked up among the numbers already, as the whole query.
      if (!byNumber || term.form.length < 2) return found;
      const put = (number, entry) => found.set(entry, { number, sum: 0, words: [] });
      (await this.byNumber(term.form, term.typed, allowed, Infinity)).forEach(put);
      if (found.size === 0) (await this.bySlip(term.form, term.typed, allowed)).forEach(put);
      return found;
    }

    // An entry must have every word of the term.
    async byWords(term, allowed, deep, cut) {
      let found = null;
      for (let i = 0; i < term.words.length; i++) {
        const begun = term.begun && i === term.words.length - 1;
        const having = await this.byWord(term.words[i], begun, allowed, deep, cut);
        if (found) {
          const before = found;
          found = new Map();
          for (const [entry, { sum, words: its }] of having) {
            const so = before.get(entry);
            if (so) found.set(entry, { number: null, sum: so.sum + sum, words: [...so.words, ...its] });
          }
        } else {
          found = having;
        }
      }
      return found || new Map();
    }

    async byWord(word, begun, allowed, deep, cut) {
      const found = new Map();
      const keep = (key, numerals) => {
        const itself = [key];
        let read = 0;
        eachPosting(numerals, (level, entry) => {
          read++;
          if (allowed && !allowed[entry]) return;
          const impact = key.length === word.length ? level : Math.max(1, Math.floor((level * word.length) / key.length));
          const before = found.get(entry);
          if (!before || impact > before.sum) found.set(entry, { number: null, sum: impact, words: itself });
        });
        return read;
      };
      const rows = [];
      const take = (key, value) => rows.push({ key, value }) < BEGINNINGS;
      if (begun && word.length >= 2) await this.words.walk(word, take);
      else await this.words.walkKey(word, take);
      for (const { key, value } of rows) {
        const numerals = new Numerals(value);
        const total = numerals.next();
        let read = keep(key, numerals);
        if (read < total && deep) {
          await this.more.walkKey(key, (same, rest) => (read += keep(same, new Numerals(rest))) < WALK);
        }
        if (read < total) cut.is = true;
      }
      return found;
    }
  }

  function combine(found, entries) {
    const counts = new Uint8Array(entries);
    let most = 0;
    for (const term of found) for (const entry of term.keys()) most = Math.max(most, ++counts[entry]);
    const byEntry = new Map();
    for (const term of found) {
      for (const [entry, match] of term) {
        if (counts[entry] < most) continue;
        if (byEntry.has(entry)) byEntry.get(entry).push(match);
        else byEntry.set(entry, [match]);
      }
    }
    const isAll = most === found.length;
    return { isAll, matches: [...byEntry].map(([entry, list]) => matchOf(entry, list, isAll)) };
  }

  function matchOf(entry, list, isAll) {
    const numbers = list.map((term) => term.number).filter(Boolean);
    const lead = isAll && numbers.length > 0 ? [...numbers].sort(compareNumbers)[0] : null;
    const sum = Math.min(list.reduce((so, term) => so + term.sum, 0), STEP - 1);
    const score = (lead ? lead.tier : TIER.words) * STEP + sum;
    return { entry, score, lead, numbers, words: [...new Set(list.flatMap((term) => term.words))] };
  }

  function browse(query, allowed, limit) {
    const why = FILTERS.filter((name) => query[name]).map((name) => `${name}: ${query[name]}`).join("; ");
    const matches = [];
    for (let entry = 0; allowed && entry < allowed.length && matches.length < limit; entry++) {
      if (allowed[entry]) matches.push({ entry, score: 0, why });
    }
    return matches;
  }

  function reasonFor(match, record) {
    const clauses = match.numbers.map((number) => reasonForNumber(number, record));
    if (match.words.length > 0) clauses.push((match.words.length === 1 ? "word: " : "words: ") + match.words.join(", "));
    return clauses.join("; ");
  }

  function reasonForNumber(match, record) {
    const isMet = (form) => (match.tier === TIER.middle
      ? form.length > match.key.length && form.endsWith(match.key) : form === match.key);
    const number = record.numbers.find(({ role, text }) => role === match.role && isMet(numberForm(text)));
    const text = number ? number.text : record.id;
    const name = (title) => {
      switch (match.role) {
        case ROLE.number: return "its number";
        case ROLE.also: return `${number && number.maker ? number.maker : "another maker"}'s number for it`;
        case ROLE.earlier: return title ? `an earlier number of ${title}` : "an earlier number";
        case ROLE.generic: return "its generic designation";
        default: return "its id";
      }
    };
    const aside = (end) => (match.role === ROLE.number ? "" : `, ${name("")}${end}`);
    switch (match.tier) {
      case TIER.typo: return `${slipBetween(match.form, match.key)} ${text}${aside("")}`;
      case TIER.middle: return `${text}${aside(",")} contains ${match.typed}`;
      case TIER.prefix: return `${text}${aside(",")} starts with ${match.typed}`;
      default: return `${text} is ${name(record.title)}`;
    }
  }

  async function open(root) {
    const lines = (await loadScript(root, "index")).split("\n").map((line) => line.split("\t"));
    const [mark, version] = lines[0];
    if (mark !== "crossref-lookup") throw new Error("This is not a lookup index; build the site again.");
    if (version !== VERSION) {
      throw new Error(`The lookup index has format ${version}, and this reader knows format ${VERSION}. `
        + "Build the site again, so that both come from one version.");
    }
    return new Reader(root, lines);
  }

  Object.assign(window.crossrefLookup, { open, isExact: (match) => match.score >= TIER.exact * STEP });
})();
