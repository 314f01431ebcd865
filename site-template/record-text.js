// A record as the text of its file, and the id that follows from it. `crossref record` writes the same text and the same
// id for the same fields (Crossref.Site/Recording), and what is written here the build reads without a complaint.
(() => {
  "use strict";

  // The keys in the order of the format.
  const ORDER = {
    claim: ["part", "at", "verdict", "basis", "sheets", "cycles", "hours", "change", "orientation", "machine", "neighbours", "source", "locator", "by", "date", "note"],
    question: ["asks", "about", "date"],
  };
  const LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"; // without 0 o 1 i l
  const LONGEST_LIBRARY = 24;

  // Letters, digits, everything from U+00A1 on and these signs; a text that begins with a sign or ends in a space is quoted.
  const PLAIN = /^[A-Za-z0-9\u00a1-\uffff](?:[A-Za-z0-9\u00a1-\uffff ._/+()'%=;~$<>,-]*[A-Za-z0-9\u00a1-\uffff._/+()'%=;~$<>,-])?$/;

  function scalar(text, inside) {
    if (PLAIN.test(text) && !(inside && text.includes(","))) return text;
    return `"${text.replace(/["\\]/g, "\\$&")}"`;
  }

  function value(given) {
    if (typeof given === "string") return scalar(given, false);
    const isList = given.every((item) => typeof item === "string");
    return isList ? `[${given.map((item) => scalar(item, true)).join(", ")}]` : `{${given.map(([key, text]) => `${scalar(key, true)}: ${scalar(text, true)}`).join(", ")}}`;
  }

  // A record without its id. A value is a text, a list of texts, or a list of pairs; what is empty is left out.
  const body = ({ kind, values }) => ORDER[kind].filter((key) => values[key]?.length).map((key) => `${key}: ${value(values[key])}\n`).join("");

  // FNV-1a, 32 bits, over UTF-8: what crypto.subtle offers it offers not everywhere on file://.
  function hash(text) {
    let sum = 2166136261;
    for (const byte of new TextEncoder().encode(text)) sum = Math.imul(sum ^ byte, 16777619);
    return sum >>> 0;
  }

  // The same text gives the same id; another one for each time that it was taken by other words.
  function mint(date, library, text, taken = 0) {
    let sum = hash(taken === 0 ? text : `${text}${taken}\n`);
    let last = "";
    for (let i = 0; i < 4; i++, sum = Math.floor(sum / LETTERS.length)) last = LETTERS[sum % LETTERS.length] + last;
    return `${date}-${library.slice(0, LONGEST_LIBRARY).replace(/-+$/, "")}-${last}`;
  }

  const whole = (record, id) => `${record.kind}: ${id}\n${body(record)}`;

  // ---- characters that nobody sees (Crossref.Core/Checking/HiddenCharacters.cs) -------------------------------

  const UNSEEN = [
    [0xad, 0xad], [0x34f, 0x34f], [0x61c, 0x61c], [0x115f, 0x1160], [0x17b4, 0x17b5], [0x180b, 0x180f], [0x200b, 0x200f],
    [0x2028, 0x202e], [0x2060, 0x206f], [0x2800, 0x2800], [0x3164, 0x3164], [0xfdd0, 0xfdef], [0xfe00, 0xfe0f], [0xfeff, 0xfeff],
    [0xffa0, 0xffa0], [0xfff0, 0xfffb], [0x1bca0, 0x1bca3], [0x1d173, 0x1d17a], [0xe0000, 0xe0fff],
  ];
  const isUnseen = (code) => (code & 0xfffe) === 0xfffe || UNSEEN.some(([from, to]) => code >= from && code <= to);
  const isJoiner = (code) => code === 0x200c || code === 0x200d || (code >= 0xfe00 && code <= 0xfe0f);
  const isControl = (code) => (code < 0x20 && code !== 9 && code !== 10) || (code >= 0x7f && code <= 0x9f);

  // Joiners and selectors stand behind a letter of the scripts that need them, or behind a sign.
  const joins = (before) => {
    const last = [...before].reverse().find((c) => !isJoiner(c.codePointAt(0)));
    return last !== undefined && last.codePointAt(0) >= 0x590 && /[\p{Lo}\p{Mn}\p{Mc}\p{So}\p{Sk}\p{Sm}]/u.test(last);
  };

  // The first hidden character of a text in words; empty when there is none.
  function hidden(text) {
    let before = "";
    for (const c of text) {
      const code = c.codePointAt(0);
      const what = code >= 0xd800 && code <= 0xdfff ? "half a character" : isControl(code) ? "a control character"
        : isUnseen(code) && !(isJoiner(code) && joins(before)) ? "a character that nobody sees" : "";
      if (what) return `${what} (U+${code.toString(16).toUpperCase().padStart(4, "0")})`;
      before += c;
    }
    return "";
  }

  // A text as it is written: one line.
  const oneLine = (text) => (/[\n\t]/.test(text) ? text.split(/[ \n\t]+/).filter(Boolean).join(" ") : text).trim();

  window.crossrefRecord = { ORDER, body, whole, mint, hidden, oneLine };
})();
