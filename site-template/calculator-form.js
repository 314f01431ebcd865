// The form of a calculator's page. It works out what is written as it is typed, says what will not do at its field, and
// keeps what is written in the address (#teeth=32&tip=34), so that a link or a form elsewhere can open the page filled in.
(() => {
  "use strict";

  const { tables, declared, record } = window.crossrefCalculatorTables;

  function element(name, text) {
    const made = document.createElement(name);
    made.textContent = text;
    return made;
  }

  // A text in which the address of a place on record leads to its page.
  function linked(name, text, root) {
    const pages = new Map(record.turning.map((place) => [place.position, place.page]));
    const made = element(name, "");
    for (const piece of text.split(/([\s;,]+)/)) {
      const page = pages.get(piece);
      made.append(page ? element("a", piece) : piece);
      if (page) made.lastChild.href = root + page;
    }
    return made;
  }

  function row({ what, figure, how }, root) {
    const [heading, value, reason] = [element("th", what), element("td", figure), linked("td", how, root)];
    heading.scope = "row";
    value.className = "figure";
    value.dataset.label = "Figure";
    reason.dataset.label = "How";
    const made = document.createElement("tr");
    made.append(heading, value, reason);
    return made;
  }

  class Field {
    constructor(box, input) {
      this.box = box;
      this.input = input;
      this.control = box.querySelector("input, select");
      this.problem = box.querySelector(".problem");
      this.hint = this.control.getAttribute("aria-describedby");
    }

    get text() { return this.control.value.trim(); }

    // A word that is none of the choices is shown as it stands, and refused.
    set text(text) {
      const { choices, default: usual } = this.input;
      if (choices.length === 0) this.control.value = text;
      else {
        const choice = choices.find((c) => c.toLowerCase() === text.toLowerCase()) ?? text;
        this.control.querySelector(".odd")?.remove();
        if (choice && !choices.includes(choice)) {
          const odd = element("option", choice);
          odd.className = "odd";
          this.control.append(odd);
        }
        this.control.value = choice || usual;
      }
    }

    get isGiven() { return this.text !== "" && this.text !== this.input.default; }

    // What is written is never hidden.
    unfold() {
      const folded = this.box.closest("details");
      if (folded) folded.open = true;
    }

    say(problem) {
      this.problem.textContent = problem;
      this.problem.hidden = !problem;
      if (problem) this.unfold();
      const described = [this.hint, problem && this.problem.id].filter(Boolean).join(" ");
      if (described) this.control.setAttribute("aria-describedby", described);
      else this.control.removeAttribute("aria-describedby");
      if (problem) this.control.setAttribute("aria-invalid", "true");
      else this.control.removeAttribute("aria-invalid");
    }
  }

  class Worksheet {
    constructor(sheet) {
      this.name = sheet.dataset.calculator;
      this.root = sheet.dataset.root;
      const find = (selector) => sheet.querySelector(selector);
      [this.form, this.says, this.cautions] = [find("form"), find(".says"), find(".outcome .safety")];
      [this.working, this.onRecord] = [find(".working"), find(".on-record")];
      const byName = new Map([...sheet.querySelectorAll(".field")].map((box) => [box.dataset.name, box]));
      this.fields = declared[this.name].map((input) => new Field(byName.get(input.name), input));
      this.form.addEventListener("input", () => this.change());
      this.form.addEventListener("submit", (event) => this.enter(event));
      find(".clear").addEventListener("click", () => this.clear());
      window.addEventListener("hashchange", () => this.readAddress());
      sheet.hidden = false;
      if (!this.readAddress()) this.work();
    }

    // A form of another page hands over what was written there behind a question mark.
    readAddress() {
      const { hash, search } = window.location;
      const state = new URLSearchParams(hash.includes("=") ? hash.slice(1) : search);
      if (!this.fields.some((field) => state.has(field.input.name))) return false;
      for (const field of this.fields) {
        field.text = (state.get(field.input.name) ?? "").trim();
        if (field.isGiven) field.unfold();
      }
      this.entered = false;
      this.work();
      return true;
    }

    writeAddress() {
      const state = new URLSearchParams(this.fields.filter((field) => field.isGiven).map((field) => [field.input.name, field.text]));
      const fragment = state.toString().replaceAll("+", "%20");
      window.history.replaceState(null, "", window.location.pathname + (fragment ? `#${fragment}` : ""));
    }

    change() {
      this.work();
      this.writeAddress();
    }

    // Whoever enters the form wants to know what is missing, too.
    enter(event) {
      event.preventDefault();
      this.entered = true;
      this.work();
      const wrong = this.fields.find((field) => !field.problem.hidden);
      if (wrong) wrong.control.focus();
      else this.says.scrollIntoView({ block: "nearest" });
    }

    clear() {
      for (const field of this.fields) field.text = "";
      this.entered = false;
      this.change();
      this.fields[0].control.focus();
    }

    work() {
      const texts = Object.fromEntries(this.fields.map((field) => [field.input.name, field.text]));
      const { working, problems = [] } = window.crossrefCalculators.run(this.name, declared[this.name], texts, tables, record);
      const missing = [];
      for (const field of this.fields) {
        const problem = problems.filter((p) => p.input === field.input.name).map((p) => p.message).join("; ");
        const shown = this.entered || field.isGiven;
        field.say(shown ? problem : "");
        if (problem && !shown) missing.push(problem);
        field.box.classList.toggle("left-empty", field.text === "");
        field.box.classList.toggle("has-unit", /[^\d\s.,+/±-]/.test(field.text));
      }
      this.show(working, missing);
    }

    show(working, missing) {
      this.says.classList.toggle("waits", !working);
      if (working) this.answer(working.answer);
      else this.says.textContent = this.waiting(missing);
      this.cautions.hidden = !working?.cautions?.length;
      this.cautions.querySelector("ul").replaceChildren(...(working?.cautions ?? []).map((caution) => element("li", caution)));
      this.working.hidden = !working;
      this.working.querySelector("tbody").replaceChildren(...(working?.lines ?? []).map((line) => row(line, this.root)));
      window.crossrefCalculators.showParts?.(this.onRecord, working?.sought, tables.tolerances, this.root);
    }

    // The first sentence is what somebody came for.
    answer(text) {
      const end = text.indexOf(". ") + 1 || text.length;
      this.says.replaceChildren(element("strong", text.slice(0, end)), text.slice(end));
    }

    waiting(missing) {
      if (this.fields.some((field) => !field.problem.hidden)) return "Something written here will not do yet; what to write instead stands at its field.";
      return missing.length > 0 ? `To begin, ${missing.join("; ")}.` : "Fill in what is known.";
    }
  }

  for (const sheet of document.querySelectorAll(".worksheet")) new Worksheet(sheet);
})();
