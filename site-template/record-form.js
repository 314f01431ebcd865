// The form for a finding or a question. What is typed is kept on this PC at once; saved, it is a file for content/inbox.
// A link may fill it in: record.html#at=ostrin-f2/fold-head/roller-2-gear&machine=folder-1
(() => {
  "use strict";

  const { Book, Picker, KeptList, check, isTurned, body, whole, mint, make } = window.crossrefRecord;
  const { Kept, isKnown } = window.crossrefRecordKept;
  const SAYS = { fits: "fits", "fits-with-change": "fits with a change", "does-not-fit": "does not fit" };
  const LINKED = ["kind", "machine", "at", "part", "verdict", "basis", "source", "by", "about", "asks"];

  // A day as this PC has it; a clock that stands before the build is wrong.
  function today(built) {
    const now = new Date();
    const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, "0")).join("-");
    return day < built ? built : day;
  }

  // One field of the form: a text, a choice, or a picker.
  class Field {
    constructor(box) {
      this.box = box;
      this.name = box.dataset.field;
      this.radios = [...box.querySelectorAll("input[type=radio]")];
      this.control = box.querySelector("input:not([type=radio]), select, textarea");
      [this.problem, this.mind, this.offers] = [".problem", ".mind", ".offers"].map((selector) => box.querySelector(selector));
      this.hint = this.control?.getAttribute("aria-describedby");
    }

    get value() { return this.picker ? this.picker.value : this.control ? this.control.value : this.radios.find((radio) => radio.checked)?.value ?? ""; }

    set value(text) {
      if (this.picker) this.picker.value = text;
      else if (this.control) this.setControl(text);
      else for (const radio of this.radios) radio.checked = radio.value === text;
    }

    // A word that is none of the choices is shown as it stands, and refused.
    setControl(text) {
      if (this.control.tagName === "SELECT" && ![...this.control.options].some((option) => option.value === text)) this.control.append(make("option", "", text));
      this.control.value = text;
    }

    focus() { (this.control ?? this.radios.find((radio) => radio.checked) ?? this.radios[0]).focus(); }

    say(problem, mind, offers = []) {
      if (!this.problem) return;
      for (const [line, text] of [[this.problem, problem], [this.mind, mind]]) {
        line.textContent = text;
        line.hidden = !text;
      }
      const ids = [this.hint, this.picker?.chosen.id, problem && this.problem.id, mind && this.mind.id].filter(Boolean).join(" ");
      const owner = this.control ?? this.box;
      if (ids) owner.setAttribute("aria-describedby", ids);
      else owner.removeAttribute("aria-describedby");
      if (this.control) {
        if (problem) this.control.setAttribute("aria-invalid", "true");
        else this.control.removeAttribute("aria-invalid");
      }
      this.offers.hidden = !problem || offers.length === 0;
      this.offers.replaceChildren(...(problem ? offers : []).map((record) => this.offer(record)));
    }

    offer(record) {
      const button = make("button", "offer", `${record.label}${record.detail ? `, ${record.detail}` : ""}`);
      button.type = "button";
      button.addEventListener("click", () => {
        this.picker.choose(record);
        this.focus();
      });
      return button;
    }
  }

  class RecordForm {
    constructor(root, data) {
      this.root = root;
      this.book = new Book(data);
      this.today = today(data.date);
      this.kept = new Kept(data.library);
      const find = (selector) => root.querySelector(selector);
      [this.form, this.says, this.saved] = [find("form"), find(".form-says"), find(".saved")];
      this.fields = new Map([...root.querySelectorAll("[data-field]")].map((box) => [box.dataset.field, new Field(box)]));
      this.unit = find("#field-unit");
      this.fillMachines();
      this.addPickers();
      this.list = new KeptList(find(".kept"), this.kept, {
        open: (work) => this.open(work),
        save: (work) => this.download(work),
        changed: (work) => (work.key === this.key ? this.begin({}) : this.list.show(this.key)),
      });
      this.form.addEventListener("input", (event) => this.change(event.target));
      this.form.addEventListener("focusout", (event) => this.leave(event.target));
      // What is said at a field moves those below it; a finger on one of them must not miss it.
      this.form.addEventListener("pointerdown", () => (this.isPressed = true));
      for (const end of ["pointerup", "pointercancel"]) window.addEventListener(end, () => window.setTimeout(() => this.release()));
      this.form.addEventListener("submit", (event) => this.save(event));
      this.form.querySelector(".clear").addEventListener("click", () => this.begin({}));
      find(".again").addEventListener("click", () => this.download(this.work));
      find(".copy").addEventListener("click", () => this.copy());
      find(".next").addEventListener("click", () => this.begin({}));
      window.addEventListener("hashchange", () => this.readAddress());
      root.hidden = false;
      this.tellStorage();
      this.readAddress();
    }

    field(name) { return this.fields.get(name); }

    tellStorage() {
      const says = this.root.querySelector(".storage-says");
      const arrived = this.list.clearKnown();
      says.textContent = !this.kept.works ? "This browser keeps nothing for this page. Save the file before you leave it."
        : arrived > 0 ? `${arrived === 1 ? "One finding" : `${arrived} findings`} recorded on this PC ${arrived === 1 ? "is" : "are"} in the library now.` : "";
    }

    fillMachines() {
      const select = this.field("machine").control;
      select.append(Object.assign(make("option", "", "not known, or none of ours"), { value: "" }));
      const groups = new Map();
      for (const machine of this.book.machine.records.filter((m) => !m.retired)) {
        if (!groups.has(machine.family)) groups.set(machine.family, Object.assign(document.createElement("optgroup"), { label: this.book.familyName(machine.family) }));
        groups.get(machine.family).append(Object.assign(make("option", "", [machine.label, this.book.data.machines.find(({ id }) => id === machine.id).facts].filter(Boolean).join(", ")), { value: machine.id }));
      }
      select.append(...groups.values());
    }

    addPickers() {
      const { book } = this;
      const among = () => book.inFamilyOf(this.field("machine").value);
      const isListed = (record) => book.at.get(this.field("at").value)?.listed.includes(record.id);
      const people = book.data.people.map((name) => ({ id: name, label: name, detail: "" }));
      const searches = {
        at: (text) => book.at.search(text, { among: among() }),
        // Nothing typed: what the maker lists at the place.
        part: (text) => book.part.search(text, text.trim() ? { first: isListed } : { among: isListed }),
        source: (text) => book.source.search(text),
        about: (text) => (text.trim() ? book.about.search(text) : { records: [], more: 0 }),
        by: (text) => ({ records: people.filter(({ label }) => label.toLowerCase().includes(text.trim().toLowerCase())).slice(0, 20), more: 0 }),
      };
      for (const [name, search] of Object.entries(searches)) {
        const field = this.field(name);
        const get = name === "by" ? () => undefined : (id) => book[name].get(id);
        field.picker = new Picker(field.control, { search, get, changed: () => this.change(field.control) });
      }
    }

    get values() {
      const values = Object.fromEntries([...this.fields].map(([name, field]) => [name, field.value]));
      return { ...values, unit: this.unit.value };
    }

    readAddress() {
      const state = new URLSearchParams(window.location.hash.slice(1));
      // A place on this page leaves the form as it is.
      if (this.isFilled && !window.location.hash.includes("=")) return;
      this.isFilled = true;
      const work = state.has("work") && this.kept.get(state.get("work"));
      if (work) {
        if (work.key !== this.key) this.open(work);
      } else this.begin(Object.fromEntries(LINKED.filter((name) => state.has(name)).map((name) => [name, state.get(name)])), false);
    }

    writeAddress(fragment) {
      window.history.replaceState(null, "", window.location.pathname + (fragment ? `#${fragment}` : ""));
    }

    // An empty form, or one that a link fills in.
    begin(fields, isNew = true) {
      this.key = "";
      this.replaced = "";
      this.fill({ kind: "finding", date: this.today, ...fields });
      if (!isNew) return;
      this.writeAddress("");
      this.field("machine").focus();
    }

    open(work) {
      this.key = work.key;
      this.replaced = work.id;
      this.fill(work.fields);
      this.writeAddress(`work=${encodeURIComponent(work.key)}`);
      this.form.scrollIntoView({ block: "start" });
      this.field("kind").focus();
    }

    fill(fields) {
      for (const [name, field] of this.fields) field.value = fields[name] ?? "";
      this.unit.value = fields.unit ?? this.unitOf(fields.machine);
      this.touched = new Set([...this.fields.keys()].filter((name) => fields[name]));
      this.entered = false;
      this.saved.hidden = true;
      this.form.hidden = false;
      this.form.querySelector(".more").open = ["locator", "neighbours", "note"].some((name) => fields[name]);
      this.say("");
      this.work = null;
      this.show();
      this.list.show(this.key);
    }

    say(text) { this.says.textContent = text; }

    // What the counter of a machine counts.
    unitOf(machine) { return this.book.machine.get(machine)?.unit ?? "sheets"; }

    change(control) {
      this.say("");
      const name = control.closest("[data-field]")?.dataset.field;
      if (control.matches("input[type=radio], select")) this.touched.add(name);
      if (name === "machine" && !this.field("count").value) this.unit.value = this.unitOf(control.value);
      this.show();
      this.keep("");
    }

    leave(control) {
      const name = control.closest("[data-field]")?.dataset.field;
      if (!name || !this.field(name).value) return;
      this.touched.add(name);
      if (!this.isPressed) this.show();
    }

    release() {
      if (!this.isPressed) return;
      this.isPressed = false;
      this.show();
    }

    // Only what is asked is shown: the count of what ran, the change of what was changed.
    show() {
      const { values, book } = this;
      const asked = {
        change: values.verdict === "fits-with-change",
        count: values.basis === "ran",
        orientation: values.orientation !== "" || isTurned(book, book.part.get(values.part), book.at.get(values.at)),
      };
      for (const [name, isAsked] of Object.entries(asked)) this.field(name).box.hidden = !isAsked;
      for (const part of this.form.querySelectorAll("[data-kind]")) part.hidden = part.dataset.kind !== values.kind;
      const known = book.at.get(values.at)?.orientation ?? [];
      this.field("orientation").control.placeholder = known.join(", ");
      const result = check(values, book, this.today);
      for (const [name, field] of this.fields) {
        const isSaid = this.entered || this.touched.has(name);
        const problem = isSaid ? result.problems[name] ?? "" : "";
        field.say(problem, !problem && (isSaid || name === "basis" || name === "source") ? this.minded(name, values, result) : "", result.offers[name]);
      }
      return result;
    }

    // That a source is missing is said when there is something to lose.
    minded(name, values, result) { return (name === "source" && !values.basis) || (name === "date" && !this.entered && !values.date) ? "" : result.minds[name] ?? ""; }

    titleOf({ kind, values }) {
      if (kind === "question") return values.asks ?? "A question";
      const label = (name) => this.book[name].get(values[name])?.label ?? values[name];
      const counted = ["sheets", "cycles", "hours"].filter((unit) => values[unit]).map((unit) => `${values[unit]} ${unit}`);
      return [
        [label("part") ?? "A part", SAYS[values.verdict] ?? "", values.at ? `at ${label("at")}` : ""].filter(Boolean).join(" "),
        [values.basis, ...counted].filter(Boolean).join(" "), [values.by, values.date].filter(Boolean).join(", "),
      ].filter(Boolean).join("; ");
    }

    // Begun work is worth keeping as soon as there is more than a link or today's date in it.
    keep(id) {
      const { values } = this;
      const isBegun = ["part", "verdict", "basis", "count", "change", "note", "locator", "asks", "by", "source"].some((name) => values[name]);
      if (!id && !this.key && !isBegun) return;
      const { record } = check(values, this.book, this.today);
      this.key ||= this.kept.newKey();
      const fields = Object.fromEntries(Object.entries(values).filter(([, text]) => text !== ""));
      this.work = { key: this.key, id, title: this.titleOf(record), text: id ? whole(record, id) : "", fields };
      if (this.kept.put(this.work)) this.writeAddress(`work=${this.key}`);
      this.list.show(this.key);
    }

    idFor(record) {
      const text = body(record);
      const date = /^\d{4}-\d{2}-\d{2}$/.test(record.values.date ?? "") ? record.values.date : this.today;
      for (let taken = 0; ; taken++) {
        const id = mint(date, this.book.data.library, text, taken);
        const isOther = this.kept.all().some((work) => work.id === id && work.key !== this.key && work.text !== whole(record, id));
        if (!isOther) return id;
      }
    }

    save(event) {
      event.preventDefault();
      this.entered = true;
      const { problems, record } = this.show();
      const wrong = [...this.fields.values()].filter((field) => problems[field.name]);
      if (wrong.length > 0) {
        this.say(wrong.length === 1 ? "One thing will not do yet. It is marked above." : `${wrong.length} things will not do yet. They are marked above.`);
        const more = wrong[0].box.closest("details");
        if (more) more.open = true;
        wrong[0].focus();
        return;
      }
      this.keep(this.idFor(record));
      this.download(this.work);
      this.showSaved();
    }

    showSaved() {
      const { id, text } = this.work;
      const find = (selector) => this.saved.querySelector(selector);
      find("h2").textContent = isKnown(id) ? "Saved. The library has this one already" : "Saved as a file";
      find(".saved-name").textContent = `${id}.yaml`;
      find(".saved-text").textContent = text;
      const replaced = this.replaced && this.replaced !== id ? `It takes the place of ${this.replaced}.yaml. If that file is in the inbox, delete it there. ` : "";
      find(".copy-says").textContent = replaced;
      this.replaced = id;
      this.saved.hidden = false;
      this.form.hidden = true;
      find("h2").focus();
    }

    download({ id, text }) {
      const link = document.createElement("a");
      link.href = URL.createObjectURL(new Blob([text], { type: "application/yaml" }));
      link.download = `${id}.yaml`;
      link.click();
      // Not at once: the browser reads it when it gets round to it.
      window.setTimeout(() => URL.revokeObjectURL(link.href), 60000);
    }

    async copy() {
      const says = this.saved.querySelector(".copy-says");
      try {
        await window.navigator.clipboard.writeText(this.work.text);
        says.textContent = "Copied.";
      } catch {
        window.getSelection().selectAllChildren(this.saved.querySelector(".saved-text"));
        says.textContent = "This browser does not copy by itself. The text is marked: copy it with Ctrl C.";
      }
    }
  }

  for (const root of document.querySelectorAll(".recording")) new RecordForm(root, window.crossrefRecordData);
})();
