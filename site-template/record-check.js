// What the library has that a finding may speak of, and what the build would say of a finding. A problem is what the
// build refuses; what it takes and warns of is minded, and may be saved all the same.
(() => {
  "use strict";

  const { hidden, oneLine } = window.crossrefRecord;
  const { fold, numberForm } = window.crossrefLookup;
  const MOST = 1e9; // the largest count that may be written
  const LONGEST = 900000; // characters; a file of records may have a megabyte
  const OFFERED = 40;

  // Most texts are plain, and a large library has many.
  const folded = (text) => (/^[ -~]*$/.test(text) ? text.toLowerCase().replace(/[^0-9a-z]+/g, " ") : fold(text));
  const formOf = (text) => (/^[ -~]*$/.test(text) ? text.toUpperCase().replace(/[^0-9A-Z]+/g, "").replace(/O/g, "0").replace(/[IL]/g, "1") : numberForm(text));
  const compare = (x, y) => (x < y ? -1 : x > y ? 1 : 0);

  // Insertions, deletions, changed letters and swapped neighbours, no part of a word touched twice.
  function distance(left, right) {
    let [before, last, row] = [[], Array.from({ length: right.length + 1 }, (_, j) => j), []];
    for (let i = 1; i <= left.length; i++) {
      row[0] = i;
      for (let j = 1; j <= right.length; j++) {
        row[j] = Math.min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (left[i - 1] === right[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && left[i - 1] === right[j - 2] && left[i - 2] === right[j - 1]) row[j] = Math.min(row[j], before[j - 2] + 1);
      }
      [before, last, row] = [last, row, before];
    }
    return last[right.length];
  }

  // Records of one type: { id, label, detail, numbers, retired } and what else there is to know of each.
  class Shelf {
    constructor(records) {
      this.records = records;
      this.byId = new Map(records.map((record) => [record.id, record]));
    }

    get(id) { return this.byId.get(id); }

    // Made when somebody types, not when the page opens.
    get entries() {
      return this.made ??= this.records.filter((record) => !record.retired).map((record) => ({
        record,
        forms: `\n${[record.id, ...(record.numbers ?? [])].map(formOf).join("\n")}\n`,
        words: ` ${folded(`${record.label} ${record.detail} ${record.id}`)}`,
      }));
    }

    // The records that a text may mean: by the id, else by the number however that is written, else by the name.
    find(text, among = () => true) {
      if (this.byId.has(text)) return [this.byId.get(text)];
      const form = formOf(text);
      const name = folded(text).trim();
      if (!form) return [];
      const byNumber = this.entries.filter(({ forms, record }) => forms.includes(`\n${form}\n`) && among(record));
      const met = byNumber.length > 0 ? byNumber : this.entries.filter(({ record }) => folded(record.label).trim() === name && among(record));
      return met.map(({ record }) => record);
    }

    // Best first: the whole number, its beginning, its middle, then words. Nothing typed gives everything that comes first.
    search(text, { among = () => true, first = () => false } = {}) {
      const form = formOf(text);
      const words = folded(text).split(" ").filter(Boolean);
      const met = [];
      for (const entry of this.entries) {
        const { record, forms } = entry;
        if (!among(record)) continue;
        const score = !form ? 1 : forms.includes(`\n${form}\n`) ? 5 : forms.includes(`\n${form}`) ? 4 : form.length > 2 && forms.includes(form) ? 3
          : words.every((word) => entry.words.includes(` ${word}`)) ? 2 : 0;
        if (score > 0) met.push({ record, score: score + (first(record) ? 0.5 : 0) });
      }
      met.sort((x, y) => y.score - x.score);
      return { records: met.slice(0, OFFERED).map(({ record }) => record), more: Math.max(met.length - OFFERED, 0) };
    }

    // What somebody probably meant; at most three, nearest first.
    nearest(text, among = () => true) {
      const form = formOf(text);
      const limit = form.length <= 3 ? 1 : Math.max(2, Math.floor(form.length / 3));
      if (!form || form.length > 160) return [];
      const near = [];
      for (const { record, forms } of this.entries.filter((entry) => among(entry.record))) {
        const away = Math.min(...forms.slice(1, -1).split("\n").filter((other) => Math.abs(other.length - form.length) <= limit).map((other) => distance(form, other)), Infinity);
        if (away <= limit) near.push({ record, away });
      }
      return near.sort((x, y) => x.away - y.away || compare(x.record.id, y.record.id)).slice(0, 3).map(({ record }) => record);
    }
  }

  class Book {
    constructor(data) {
      this.data = data;
      const families = new Map(data.families.map((family) => [family.id, family.name]));
      this.familyName = (id) => families.get(id) ?? id;
      this.machine = new Shelf(data.machines.map((m) => ({ ...m, label: m.name, detail: [this.familyName(m.family), m.facts].filter(Boolean).join(", ") })));
      this.at = new Shelf(data.positions.map((p) => ({ ...p, label: p.name, detail: `${p.assembly}, ${this.familyName(p.family)}` })));
      this.source = new Shelf(data.sources.map((s) => ({ ...s, label: s.title })));
      this.part = new Shelf(data.parts === "" ? [] : data.parts.split("\n").map((line) => {
        const [id, name, maker, marks, ...numbers] = line.split("\t");
        return {
          id, numbers, label: numbers[0] ?? id, detail: [name, maker].filter(Boolean).join(", "),
          safety: marks.includes("s"), handed: marks.includes("h"), retired: marks.includes("r"),
        };
      }));
      // A question may be about a part or a place.
      this.about = new Shelf([...this.at.records, ...this.part.records]);
    }

    // Those whose place is in the family of a machine; all when no machine is known.
    inFamilyOf(machine) {
      const family = this.machine.get(machine)?.family;
      return family ? (record) => record.family === undefined || record.family === family : () => true;
    }
  }

  const DATE = /^([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?$/;

  function isDate(text) {
    if (text === "unknown") return true;
    const [, year, month, day] = DATE.exec(text) ?? [];
    if (!year || year < 1900 || year > 2199 || (month !== undefined && (month < 1 || month > 12))) return false;
    return day === undefined || (day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate());
  }

  function countProblem(text) {
    if (!/^-?[0-9]{1,15}(\.[0-9]{1,12})?$/.test(text) || /\.0*[1-9]/.test(text)) {
      return /^[0-9]{1,3}([ ,.'_][0-9]{3}){1,2}$/.test(text) ? `Write digits only: ${text.replace(/[^0-9]/g, "")}.` : "Write a whole number in digits, such as 18000.";
    }
    const number = Number(text);
    return number < 0 ? "A count cannot be below nothing." : number > MOST ? `No counter goes beyond ${MOST}.` : "";
  }

  // "flange: inboard, hub: outboard" as pairs; a text instead says what is wrong.
  function pairs(text) {
    const found = [];
    for (const piece of text.split(",").map(oneLine).filter(Boolean)) {
      const [, key, side] = /^([^:]*):(.*)$/s.exec(piece)?.map((t) => t.trim()) ?? [];
      if (!key || !side) return "Write what is turned, a colon, and where to, such as flange: inboard.";
      if (key.length > 100) return "Say in a word what is turned, and the rest in the note.";
      if (found.some(([other]) => other === key)) return `The ${key} is there twice.`;
      found.push([key, side]);
    }
    return found;
  }

  class Check {
    constructor(fields, book, today) {
      [this.book, this.today, this.problems, this.minds, this.offers, this.values] = [book, today, {}, {}, {}, {}];
      this.kind = fields.kind === "question" ? "question" : "claim";
      this.raw = fields;
    }

    // What is written in a field, as it will stand in the file; empty when it cannot.
    text(field) {
      const raw = this.raw[field] ?? "";
      const found = hidden(raw);
      if (found) this.refuse(field, `There is ${found} in it. Delete it, with what stands around it, and type that anew.`);
      return found ? "" : oneLine(raw);
    }

    refuse(field, text) { this.problems[field] ??= text; }

    mind(field, text) { this.minds[field] = this.minds[field] ? `${this.minds[field]} ${text}` : text; }

    take(field, needed = "") {
      const text = this.text(field);
      if (text) this.values[field] = text;
      else if (needed) this.refuse(field, needed);
      return text;
    }

    // A field that names a record.
    name(field, { needed = "", unknown, among }) {
      const text = this.take(field, needed);
      if (!text) return undefined;
      const shelf = this.book[field];
      const met = shelf.find(text, among);
      if (met.length === 1) {
        this.values[field] = met[0].id;
        if (met[0].retired) this.mind(field, `${met[0].label} is retired: it is left out of answers.`);
        return met[0];
      }
      const near = met.length > 0 ? met : shelf.nearest(text, among);
      this.offers[field] = (near.length > 0 ? near : shelf.search(text, { among }).records).slice(0, 3);
      this.refuse(field, met.length > 0 ? "That may be one of several: choose." : `${unknown} "${text.slice(0, 60)}".`);
      return undefined;
    }

    date() {
      const text = this.take("date");
      if (!text) this.mind("date", "Without a date it counts as older than everything else.");
      else if (!isDate(text)) this.refuse("date", DATE.test(text) ? "The calendar has no such day; years run from 1900 to 2199." : "Write the year first: 2026-02-11, 2026-02 or 2026, or unknown.");
      else if (text !== "unknown" && text > this.today.slice(0, text.length)) this.mind("date", `That is after today, ${this.today}.`);
    }

    finding() {
      const machine = this.name("machine", { unknown: "No machine here is called" });
      const position = this.name("at", { needed: "Say where it was tried.", unknown: "No place here is called", among: this.book.inFamilyOf(machine?.id) });
      const part = this.name("part", { needed: "Say which part was tried.", unknown: "No part here has the number" });
      if (machine && position && machine.family !== position.family) {
        this.refuse("at", `${machine.label} has no such place: it is one of ${this.book.familyName(position.family)}.`);
      }
      const verdict = this.take("verdict", "Say whether it fits.");
      const basis = this.take("basis", "Say how you know.");
      if (basis === "ran") this.count();
      if (verdict === "fits-with-change") this.take("change", "Say what was changed: nobody can do it again otherwise.");
      this.orientation(part, position);
      this.take("neighbours");
      const source = this.name("source", { unknown: "No source or repair here is called" });
      for (const field of ["locator", "by", "note"]) this.take(field);
      this.date();
      this.evidence({ verdict, basis, source, isSafety: part?.safety || position?.safety });
    }

    count() {
      const text = this.text("count");
      const unit = this.raw.unit || "sheets";
      if (!text) return this.refuse("count", "Say how long it ran.");
      const problem = countProblem(text);
      if (problem) return this.refuse("count", problem);
      this.values[unit] = text;
      const needed = this.book.data.needed[unit];
      if (Number(text) < needed) this.mind("count", `Below ${needed} ${unit} it counts as seated.`);
      return undefined;
    }

    orientation(part, position) {
      const found = pairs(this.text("orientation"));
      if (typeof found === "string") this.refuse("orientation", found);
      else if (found.length > 0) this.values.orientation = found;
      else if (this.isTurned(part, position)) this.mind("orientation", "It matters here. If it fails later, nobody can tell whether it was the wrong way round.");
    }

    isTurned(part, position) {
      return Boolean(part?.handed || position?.orientation.length || position?.listed.some((id) => this.book.part.get(id)?.handed));
    }

    evidence({ verdict, basis, source, isSafety }) {
      const isDocumented = basis === "documented" && source?.documents;
      if (basis === "documented" && !source) this.mind("source", "Name the document, or it counts as told.");
      else if (basis === "documented" && !isDocumented) this.mind("source", "That is no document of the maker and no standard, or this library has not confirmed it. It counts as told.");
      else if (basis && !source && !["told", "offered"].includes(basis)) this.mind("source", "Without a source it counts as told, because nobody can look it up.");
      if (isSafety && verdict && verdict !== "does-not-fit" && !isDocumented) {
        this.mind("basis", "This is a safety part or a safety place. It will not count as a fit without the maker’s document, whatever is recorded.");
      }
    }

    question() {
      this.take("asks", "Write the question.");
      const about = this.name("about", { unknown: "No part and no place here is called" });
      if (about) this.values.about = [about.id];
      this.date();
    }

    run() {
      if (this.kind === "question") this.question();
      else this.finding();
      const size = Object.values(this.values).reduce((sum, value) => sum + String(value).length, 0);
      if (size > LONGEST) this.refuse(this.kind === "question" ? "asks" : "note", "That is more than a file may hold.");
      const { problems, minds, offers, values, kind } = this;
      return { problems, minds, offers, record: { kind, values } };
    }
  }

  Object.assign(window.crossrefRecord, { Book, check: (fields, book, today) => new Check(fields, book, today).run(), isTurned: (book, part, position) => Check.prototype.isTurned.call({ book }, part, position) });
})();
