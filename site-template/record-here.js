// On a position's page: what was recorded here on this PC and is not in the library yet.
(() => {
  "use strict";

  const { Kept, isKnown } = window.crossrefRecordKept;

  function show(box, works) {
    const make = (name, text) => Object.assign(document.createElement(name), { textContent: text });
    const lines = works.filter(({ id }) => !isKnown(id)).map((work) => {
      const line = make("li", "");
      const link = make("a", "Open it");
      link.href = `${box.dataset.root}record.html#work=${encodeURIComponent(work.key)}`;
      line.append(make("span", `${work.title}. `), link);
      return line;
    });
    if (lines.length === 0) return;
    const [heading, list] = [make("p", ""), make("ul", "")];
    heading.append(make("strong", "Not yet in the library"), ", recorded on this PC:");
    list.className = "plain-list";
    list.append(...lines);
    box.replaceChildren(heading, list);
    box.hidden = false;
  }

  for (const box of document.querySelectorAll(".recorded-here")) {
    const here = new Kept(box.dataset.library).all().filter(({ id, fields }) => id && [fields.at, fields.about].includes(box.dataset.at));
    if (here.length === 0) continue;
    // Read only where something is to be compared. If it cannot be read, better too much is shown than too little.
    const script = document.createElement("script");
    script.src = `${box.dataset.root}record-known.js`;
    script.addEventListener("load", () => show(box, here));
    script.addEventListener("error", () => show(box, here));
    document.head.append(script);
  }
})();
