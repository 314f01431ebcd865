// A field that offers what the library has while somebody types. The list is never longer than what is looked at, however
// many parts there are.
(() => {
  "use strict";

  function make(name, className, text) {
    const made = document.createElement(name);
    made.className = className;
    made.textContent = text;
    return made;
  }

  class Picker {
    // search: (text) => { records: [{ id, label, detail }], more }; get: (id) => record; changed: () => void.
    constructor(input, { search, get, changed }) {
      Object.assign(this, { input, search, get, changed, active: -1, options: [] });
      this.list = make("ul", "picker-list", "");
      this.list.id = `${input.id}-list`;
      this.list.setAttribute("role", "listbox");
      this.list.setAttribute("aria-label", document.querySelector(`label[for="${input.id}"]`).textContent.trim());
      this.list.hidden = true;
      this.chosen = make("p", "picker-chosen", "");
      this.chosen.id = `${input.id}-chosen`;
      input.closest(".entry").append(this.list);
      input.closest(".entry").after(this.chosen);
      for (const [name, text] of [["role", "combobox"], ["aria-autocomplete", "list"], ["aria-controls", this.list.id], ["aria-expanded", "false"]]) input.setAttribute(name, text);
      input.addEventListener("input", () => this.type());
      input.addEventListener("click", () => this.open());
      input.addEventListener("keydown", (event) => this.key(event));
      input.addEventListener("blur", () => this.close());
      // The field keeps the focus while the list is tapped or scrolled.
      this.list.addEventListener("pointerdown", (event) => event.preventDefault());
      this.list.addEventListener("mousedown", (event) => event.preventDefault());
      this.list.addEventListener("click", (event) => this.tap(event));
    }

    // The id of what was chosen, or what was typed.
    get value() { return this.record && this.input.value === this.record.label ? this.record.id : this.input.value; }

    set value(text) {
      this.record = this.get(text);
      this.input.value = this.record ? this.record.label : text;
      this.tell();
    }

    tell() {
      const record = this.record && this.input.value === this.record.label ? this.record : undefined;
      this.chosen.textContent = record ? [record.detail, record.id].filter(Boolean).join(" · ") : "";
    }

    type() {
      this.tell();
      this.open();
    }

    open() {
      const whole = this.record && this.input.value === this.record.label;
      const { records, more } = this.search(whole ? "" : this.input.value);
      this.options = records;
      this.active = -1;
      this.input.removeAttribute("aria-activedescendant");
      const lines = records.map((record, i) => {
        const line = make("li", "picker-option", "");
        line.id = `${this.list.id}-${i}`;
        line.setAttribute("role", "option");
        line.setAttribute("aria-selected", "false");
        line.append(make("span", "picker-label", record.label), " ", make("span", "picker-detail", record.detail ?? ""));
        return line;
      });
      if (more > 0) {
        const line = make("li", "picker-more", `${more} more: type more of it`);
        line.setAttribute("role", "option");
        line.setAttribute("aria-disabled", "true");
        line.setAttribute("aria-selected", "false");
        lines.push(line);
      }
      this.list.replaceChildren(...lines);
      this.show(lines.length > 0);
    }

    close() { this.show(false); }

    show(isOpen) {
      this.list.hidden = !isOpen;
      this.input.setAttribute("aria-expanded", String(isOpen));
    }

    key(event) {
      const isOpen = !this.list.hidden;
      if (event.key === "ArrowDown" || event.key === "ArrowUp") {
        event.preventDefault();
        if (!isOpen) this.open();
        this.move(event.key === "ArrowDown" ? 1 : -1);
      } else if (event.key === "Escape" && isOpen) {
        event.preventDefault();
        this.close();
      } else if (event.key === "Enter") {
        // A scanner ends its line so; the form is saved by its button.
        event.preventDefault();
        if (isOpen && this.options.length > 0 && (this.active >= 0 || this.input.value.trim())) this.choose(this.options[Math.max(this.active, 0)]);
      }
    }

    move(by) {
      if (this.options.length === 0) return;
      const lines = this.list.children;
      lines[this.active]?.setAttribute("aria-selected", "false");
      this.active = (this.active + by + this.options.length + (this.active < 0 && by < 0 ? 1 : 0)) % this.options.length;
      lines[this.active].setAttribute("aria-selected", "true");
      lines[this.active].scrollIntoView({ block: "nearest" });
      this.input.setAttribute("aria-activedescendant", lines[this.active].id);
    }

    tap(event) {
      const line = event.target.closest(".picker-option");
      if (line) this.choose(this.options[[...this.list.children].indexOf(line)]);
    }

    choose(record) {
      this.value = record.id;
      this.close();
      this.changed();
    }
  }

  window.crossrefRecord.Picker = Picker;
  window.crossrefRecord.make = make;
})();
