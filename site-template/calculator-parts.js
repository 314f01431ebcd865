// Parts on record that may be the one in hand, below what a calculator makes of its sizes: as SizeSearch.Find and the
// command do. The parts come from calculator-parts-<kind>.js.
(() => {
  "use strict";

  const MOST_SHOWN = 10;

  // What is known to agree, and what is not on record or in doubt itself; null when a size in question differs, or none agrees.
  function held(part, sizes, inQuestion, doubtful) {
    const found = { part, agreeing: [], unknown: [] };
    for (const [name, bands] of inQuestion) {
      const { agreement } = window.crossrefCalculators.tools.compare(bands, sizes[name], part.sizes[name]);
      if (agreement === "differs") return null;
      (agreement === "agrees" && name !== doubtful ? found.agreeing : found.unknown).push(name);
    }
    return found.agreeing.length > 0 ? found : null;
  }

  // The best first; parts come in order of id.
  function find({ kind, sizes, doubtful }, parts, tolerances) {
    const inQuestion = Object.entries(tolerances[kind]).filter(([attribute]) => attribute in sizes);
    return parts.map((part) => held(part, sizes, inQuestion, doubtful)).filter(Boolean)
      .sort((a, b) => b.agreeing.length - a.agreeing.length || b.part.known - a.part.known);
  }

  function item({ part, agreeing, unknown }, root) {
    const made = document.createElement("li");
    const link = document.createElement("a");
    link.href = root + part.page;
    link.textContent = part.number;
    link.className = "no";
    made.append(link, ` ${part.name}`);
    const say = (name, text) => {
      const line = document.createElement("span");
      line.className = name;
      line.textContent = text;
      made.append(line);
    };
    say("sub", `agrees: ${agreeing.join(", ")}${unknown.length > 0 ? `; unknown: ${unknown.join(", ")}` : ""}`);
    say("sub", `in the house: ${part.house}`);
    if (part.safety) say("sub mind", "A safety part: sizes never make it a fit, only the maker's document does.");
    return made;
  }

  // Fills the section of the page; hidden while there is nothing to look for.
  function showParts(section, sought, tolerances, root) {
    section.hidden = !sought || Object.keys(sought.sizes).length === 0;
    const found = section.hidden ? [] : find(sought, window.crossrefParts, tolerances);
    const more = found.length - MOST_SHOWN;
    const [says, list, rest] = section.querySelectorAll("p, ol");
    says.textContent = found.length > 0 ? "To look at, and not yet an answer: none is known to differ in these sizes." : "No part on record has these sizes.";
    list.replaceChildren(...found.slice(0, MOST_SHOWN).map((f) => item(f, root)));
    rest.textContent = more > 0 ? `And ${more} more; with more sizes filled in they become fewer.` : "";
    [list.hidden, rest.hidden] = [found.length === 0, more <= 0];
  }

  Object.assign(window.crossrefCalculators, { find, showParts });
})();
