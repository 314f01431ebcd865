// What was recorded on this PC and is not in the library yet. It is kept in localStorage, which Chromium shares among all
// files of the machine, so the key carries the library's id and nothing read from it is trusted; Firefox keeps one store
// for each file, so there only the page that records knows.
(() => {
  "use strict";

  const LONGEST = 1000000;

  const isText = (value) => typeof value === "string" && value.length <= LONGEST;

  // { key, id, title, text, fields }: a work without an id has not been saved as a file yet.
  function sound(work) {
    return work && ["key", "id", "title", "text"].every((name) => isText(work[name])) && work.key !== ""
      && work.fields && typeof work.fields === "object" && Object.values(work.fields).every(isText);
  }

  class Kept {
    constructor(library) {
      this.name = `crossref:${library}:recorded`;
      this.works = this.use((storage) => {
        // One that only pretends to keep is found out at once.
        storage.setItem(`${this.name}:try`, "kept");
        const kept = storage.getItem(`${this.name}:try`) === "kept";
        storage.removeItem(`${this.name}:try`);
        return kept;
      }) === true;
    }

    // Even asking for the store may be refused.
    use(what) {
      try {
        return what(window.localStorage);
      } catch {
        return null;
      }
    }

    // Newest first.
    all() {
      const kept = this.use((storage) => JSON.parse(storage.getItem(this.name)));
      return Array.isArray(kept) ? kept.filter(sound) : [];
    }

    get(key) { return this.all().find((work) => work.key === key); }

    newKey() { return String(1 + Math.max(0, ...this.all().map((work) => Number(work.key) || 0))); }

    // False when there is no room, or no store.
    put(work) { return this.write([work, ...this.all().filter(({ key }) => key !== work.key)]); }

    remove(key) { return this.write(this.all().filter((work) => work.key !== key)); }

    write(works) {
      return this.use((storage) => {
        if (works.length > 0) storage.setItem(this.name, JSON.stringify(works));
        else storage.removeItem(this.name);
        return true;
      }) === true;
    }
  }

  // Whether the library has a record, by its id (record-known.js).
  function isKnown(id) {
    const known = window.crossrefRecordKnown ?? {};
    const start = id.slice(0, -4);
    return Object.hasOwn(known, start) && known[start].split(" ").includes(id.slice(-4));
  }

  window.crossrefRecordKept = { Kept, isKnown };
})();
