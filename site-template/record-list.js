// The list of what was recorded on this PC and is not in the library yet.
(() => {
  "use strict";

  const { make } = window.crossrefRecord;
  const { isKnown } = window.crossrefRecordKept;

  class KeptList {
    // open, save: what to do with a work; changed: () => void after one was taken off.
    constructor(section, kept, { open, save, changed }) {
      Object.assign(this, { section, kept, open, save, changed });
      this.list = section.querySelector(".kept-list");
      this.says = section.parentElement.querySelector(".kept-says");
    }

    // Takes off what the library has by now, and gives how many that were.
    clearKnown() {
      const arrived = this.kept.all().filter(({ id }) => id && isKnown(id));
      for (const work of arrived) this.kept.remove(work.key);
      return arrived.length;
    }

    show(open) {
      const works = this.kept.all();
      this.section.hidden = works.length === 0;
      const others = works.filter((work) => work.key !== open).length;
      this.says.hidden = others === 0;
      this.says.textContent = others === 1 ? "One more, recorded on this PC, is not yet in the library" : `${others} more, recorded on this PC, are not yet in the library`;
      this.list.replaceChildren(...works.map((work) => this.line(work, work.key === open)));
    }

    line(work, isOpen) {
      const line = make("li", "kept-work", "");
      const title = make("p", "kept-title", work.title);
      const about = make("p", "small", work.id ? `Not yet in the library. Saved as ${work.id}.yaml.` : "Begun, not saved as a file.");
      if (isOpen) about.append(" Open now.");
      const acts = make("p", "acts", "");
      acts.append(this.button("Open", work, () => this.open(work)));
      if (work.id) acts.append(this.button("Save again", work, () => this.save(work)));
      acts.append(this.remover(work));
      line.append(title, about, acts);
      return line;
    }

    button(text, work, act) {
      const button = make("button", "", text);
      button.type = "button";
      button.setAttribute("aria-label", `${text}: ${work.title}`);
      button.addEventListener("click", act);
      return button;
    }

    // Once asks, twice removes: nothing else has it.
    remover(work) {
      const button = this.button("Remove", work, () => {
        if (button.textContent === "Remove") {
          button.textContent = "Remove for good?";
          button.setAttribute("aria-label", `Remove for good? ${work.title}`);
          return;
        }
        this.kept.remove(work.key);
        this.changed(work);
      });
      button.classList.add("clear");
      button.addEventListener("blur", () => {
        button.textContent = "Remove";
        button.setAttribute("aria-label", `Remove: ${work.title}`);
      });
      return button;
    }
  }

  window.crossrefRecord.KeptList = KeptList;
})();
