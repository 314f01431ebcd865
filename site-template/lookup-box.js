// The lookup box of a page: <form class="lookup" data-root="../" data-library="…"> with <input type="search">, <p role="status">
// and <ol>. The form is hidden until this script runs. "/" goes to the box, arrows walk the results, Enter opens
// a number typed whole or goes to the first result, Escape goes back and clears. An empty box offers the pages viewed
// last (lookup-recent.js). The query lives in the URL's
// fragment (#q=…), so that going back finds it again.
(() => {
  "use strict";

  const FIRST_LIMIT = 20; // each line may cost a file; more on demand
  const MORE = 5;
  const FILTERS = { type: "Type", kind: "Kind", family: "Family", standing: "Standing" };
  const readers = new Map();
  let boxes = 0;

  // One reader for all boxes of a root; a failed start may be tried again.
  function readerFor(root) {
    if (!readers.has(root)) {
      const reader = window.crossrefLookup.open(root);
      reader.catch(() => readers.delete(root));
      readers.set(root, reader);
    }
    return readers.get(root);
  }

  function element(name, className, text) {
    const made = document.createElement(name);
    made.className = className;
    if (text) made.textContent = text;
    return made;
  }

  class Box {
    constructor(form) {
      this.form = form;
      // Never empty: what follows must stay a relative address, whatever it says.
      this.root = form.dataset.root || "./";
      this.input = form.querySelector("input[type=search]");
      this.list = form.querySelector("ol");
      this.status = form.querySelector("[role=status]");
      this.prefix = `lookup-${++boxes}`;
      this.list.id = this.list.id || `${this.prefix}-list`;
      this.input.setAttribute("aria-controls", this.list.id);
      this.limit = FIRST_LIMIT;
      this.more = element("button", "lookup-more", "More hits");
      this.more.type = "button";
      this.more.hidden = true;
      this.more.addEventListener("click", () => this.askMore());
      this.list.after(this.more);
      this.recent = new window.crossrefLookup.Recent(form.dataset.library || "", this.root);
      this.recent.noteThisPage();
      this.recent.forget.addEventListener("click", () => this.input.focus());
      this.list.before(this.recent.box);
      this.list.addEventListener("click", (event) => {
        const link = event.target.closest("a");
        if (link) this.recent.note(link.href, link.textContent);
      });
      this.input.addEventListener("focus", () => this.offerRecent());
      window.addEventListener("pageshow", () => this.offerRecent()); // also when a page comes back as it was left
      this.input.addEventListener("input", () => this.askAnew());
      form.addEventListener("submit", (event) => this.enter(event));
      form.addEventListener("keydown", (event) => this.key(event));
      window.addEventListener("hashchange", () => this.readFragment());
      form.hidden = false;
      this.offerRecent();
      this.readFragment();
      if (form.dataset.preload !== "off") this.whenIdle(() => this.preload());
    }

    get links() { return this.recent.links.length > 0 ? this.recent.links : [...this.list.querySelectorAll("a")]; }

    get query() {
      const query = { text: this.input.value, limit: this.limit };
      for (const select of this.form.querySelectorAll("select")) if (select.value) query[select.name] = select.value;
      return query;
    }

    isAsking(query) {
      return query.text.trim() !== "" || Object.keys(FILTERS).some((name) => query[name]);
    }

    offerRecent() {
      if (this.isAsking(this.query)) this.recent.hide();
      else this.recent.show();
    }

    focus() {
      this.input.focus();
      this.input.select();
    }

    whenIdle(act) {
      if (window.requestIdleCallback) window.requestIdleCallback(act, { timeout: 2000 });
      else setTimeout(act, 300);
    }

    async preload() {
      try {
        const reader = await readerFor(this.root);
        this.offerFilters(reader);
        await reader.loadAll();
      } catch {
        // Said when somebody asks; a page that nobody searches need not complain.
      }
    }

    askAnew() {
      this.limit = FIRST_LIMIT;
      return this.ask();
    }

    // The button may vanish under the keyboard's focus, so the first line that is new takes it.
    async askMore() {
      const next = this.links.length;
      this.limit *= MORE;
      await this.ask();
      await this.filled;
      this.goTo(next);
    }

    // Answers the newest query; while one is being answered, those typed meanwhile are skipped but the last.
    async ask() {
      this.asked = this.query;
      this.offerRecent();
      if (this.busy) return;
      this.busy = true;
      while (this.asked) {
        const query = this.asked;
        this.asked = null;
        await this.answer(query);
      }
      this.busy = false;
    }

    async answer(query) {
      try {
        const reader = await readerFor(this.root);
        this.offerFilters(reader);
        const matches = await reader.match(query);
        if (this.asked) return;
        this.writeFragment(query);
        this.form.classList.remove("lookup-failed");
        this.show(reader, query, matches);
        if (this.entered) await this.go(reader, matches);
      } catch (error) {
        this.list.replaceChildren();
        this.more.hidden = true;
        this.form.classList.add("lookup-failed");
        this.status.textContent = error.message;
      }
      this.entered = false;
    }

    // The lines stand as soon as the hits are known and fill as their records arrive.
    show(reader, query, matches) {
      this.status.textContent = !this.isAsking(query) ? ""
        : matches.length === 0 ? `Nothing found for ${query.text.trim() || "this filter"}.`
          : matches.length >= query.limit ? `The ${query.limit} best hits.`
            : matches.length === 1 ? "1 hit." : `${matches.length} hits.`;
      this.more.hidden = matches.length < query.limit;
      const lines = matches.map(() => element("li", "lookup-hit lookup-pending", "…"));
      this.list.replaceChildren(...lines);
      this.list.setAttribute("aria-busy", String(lines.length > 0));
      this.filled = Promise.all(matches.map(async (match, i) => this.fill(lines[i], await reader.row(match), i)))
        .catch((error) => { this.status.textContent = error.message; })
        .finally(() => this.list.removeAttribute("aria-busy"));
    }

    fill(line, hit, i) {
      const link = element("a", "lookup-open", hit.title || hit.id);
      link.href = this.root + hit.page;
      link.tabIndex = i === 0 ? 0 : -1;
      const why = element("span", "lookup-why", hit.why);
      why.id = `${this.prefix}-why-${i}`;
      link.setAttribute("aria-describedby", why.id);
      line.className = "lookup-hit";
      line.dataset.type = hit.type;
      line.replaceChildren(link, " ", element("span", "lookup-type", hit.type), " ");
      if (hit.detail) line.append(element("span", "lookup-detail", hit.detail), " ");
      if (hit.standing) line.append(element("span", "lookup-standing", hit.standing), " ");
      line.append(why);
    }

    // A scanner's Enter may come before the answer: it then waits for it.
    enter(event) {
      event.preventDefault();
      this.entered = true;
      this.ask();
    }

    // Opens a hit only when it is the one thing whose whole number was typed; anything less is for a person to choose.
    async go(reader, matches) {
      const [first, second] = matches;
      if (!first) return;
      if (window.crossrefLookup.isExact(first) && !(second && second.score === first.score)) {
        const { page, title } = await reader.row(first);
        this.recent.note(this.root + page, title);
        window.location.assign(this.root + page);
        return;
      }
      await this.filled;
      if (document.activeElement === this.input) this.goTo(0);
    }

    goTo(i) {
      const { links } = this;
      if (i < 0 || links.length === 0) {
        this.input.focus();
        return;
      }
      const next = links[Math.min(i, links.length - 1)];
      links.forEach((link) => { link.tabIndex = link === next ? 0 : -1; });
      next.focus();
    }

    key(event) {
      if (event.isComposing || event.ctrlKey || event.altKey || event.metaKey) return;
      const at = this.links.indexOf(event.target);
      if (at < 0 && event.target !== this.input) return;
      const steps = { ArrowDown: at + 1, ArrowUp: at - 1 };
      if (at >= 0) Object.assign(steps, { Home: 0, End: Infinity });
      if (event.key in steps) {
        event.preventDefault();
        if (at >= 0 || event.key === "ArrowDown") this.goTo(steps[event.key]);
      } else if (event.key === "Escape") {
        event.preventDefault();
        const isEmpty = this.input.value === "";
        if (at < 0 && !isEmpty) {
          this.input.value = "";
          this.askAnew();
        }
        this.input.focus();
        if (at < 0 && isEmpty) this.recent.hide();
      } else if (at >= 0 && event.key.length === 1 && event.key !== " ") {
        this.focus(); // typing or scanning on a result begins a new query
      }
    }

    offerFilters(reader) {
      const place = this.form.querySelector(".lookup-filters");
      if (!place || this.offered) return;
      this.offered = true;
      for (const [name, caption] of Object.entries(FILTERS)) {
        const values = reader.filterValues.filter(({ filter }) => filter === name);
        if (values.length < 2) continue;
        const select = element("select", "lookup-filter");
        select.name = name;
        select.append(new Option("any", ""), ...values.map(({ value, count }) => new Option(`${value} (${count})`, value)));
        select.value = this.wanted[name] || "";
        select.addEventListener("change", () => this.askAnew());
        const label = element("label", "lookup-filter-label", `${caption} `);
        label.append(select);
        place.append(label, " ");
      }
      // A filter that the fragment names had no place before.
      if (this.asked === null && Object.keys(this.wanted).some((name) => name in FILTERS)) this.asked = this.query;
    }

    // Without filters the other names are free for the rest of the page.
    get stateNames() { return this.form.querySelector(".lookup-filters") ? ["q", ...Object.keys(FILTERS)] : ["q"]; }

    readFragment() {
      const wanted = Object.fromEntries(new URLSearchParams(window.location.hash.slice(1)));
      const isOurs = this.stateNames.some((name) => name in wanted);
      this.wanted = isOurs ? wanted : {};
      if (!isOurs) return;
      this.input.value = wanted.q || "";
      for (const select of this.form.querySelectorAll("select")) select.value = wanted[select.name] || "";
      this.ask();
    }

    writeFragment(query) {
      const state = new URLSearchParams();
      if (query.text.trim()) state.set("q", query.text.trim());
      for (const name of Object.keys(FILTERS)) if (query[name]) state.set(name, query[name]);
      const fragment = state.toString();
      const isOurs = this.stateNames.some((name) => window.location.hash.startsWith(`#${name}=`));
      if (fragment ? window.location.hash === `#${fragment}` : !isOurs) return;
      window.history.replaceState(null, "", fragment ? `#${fragment}` : window.location.pathname + window.location.search);
    }
  }

  document.documentElement.classList.remove("no-js");
  const all = [...document.querySelectorAll("form.lookup")].map((form) => new Box(form));
  document.addEventListener("keydown", (event) => {
    const isTyping = event.target.closest("input, textarea, select, [contenteditable]");
    if (event.key !== "/" || isTyping || event.ctrlKey || event.altKey || event.metaKey || all.length === 0) return;
    event.preventDefault();
    all[0].focus();
  });
})();
