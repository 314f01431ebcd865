// The pages opened last on this PC, offered while the lookup box is empty. They are kept in localStorage, which
// Chromium shares among all files of the machine, so the key carries the library's id and nothing read from it is
// trusted; Firefox keeps one store for each file, so a page there knows only what was opened from it. A browser that
// refuses to store loses the list and nothing else.
(() => {
  "use strict";

  const MOST = 8;
  const LONGEST_TITLE = 120;

  class Recent {
    constructor(library, root) {
      this.root = root;
      this.key = `crossref:${library}:recent`;
      this.base = new URL(root, window.location.href).href;
      this.here = this.pageOf(window.location.href);
      this.links = [];
      this.makeBox();
    }

    // A page of this site by its path from the root, without the place in it; null for anything else.
    pageOf(address) {
      let url;
      try {
        url = new URL(address, this.base);
      } catch {
        return null;
      }
      url.hash = "";
      url.search = "";
      return url.href.startsWith(this.base) && url.href.endsWith(".html") ? url.href.slice(this.base.length) : null;
    }

    // Everybody starts from the first page, so it is no news.
    note(address, title) {
      const page = this.pageOf(address);
      if (!page || page === "index.html" || !title) return;
      const others = this.read().filter((entry) => entry.page !== page);
      this.store((storage) => storage.setItem(this.key, JSON.stringify([{ page, title }, ...others].slice(0, MOST))));
    }

    noteThisPage() {
      const heading = document.querySelector("h1");
      if (heading) this.note(window.location.href, heading.textContent.trim());
    }

    read() {
      const kept = this.store((storage) => JSON.parse(storage.getItem(this.key)));
      if (!Array.isArray(kept)) return [];
      return kept.slice(0, MOST)
        .filter((entry) => entry && typeof entry.page === "string" && typeof entry.title === "string" && entry.title.trim())
        .map(({ page, title }) => ({ page: this.pageOf(page), title: title.slice(0, LONGEST_TITLE) }))
        .filter(({ page }) => page);
    }

    // Even asking for the store may be refused.
    store(use) {
      try {
        return use(window.localStorage);
      } catch {
        return null;
      }
    }

    makeBox() {
      const make = (name, className, text) => {
        const made = document.createElement(name);
        made.className = className;
        made.textContent = text;
        return made;
      };
      this.box = make("div", "lookup-recent", "");
      this.box.hidden = true;
      this.box.setAttribute("role", "group");
      this.box.setAttribute("aria-label", "Recently viewed");
      this.list = make("ul", "lookup-recent-list", "");
      this.forget = make("button", "lookup-forget", "Forget these pages");
      this.forget.type = "button";
      this.forget.addEventListener("click", () => {
        this.store((storage) => storage.removeItem(this.key));
        this.show();
      });
      this.box.append(make("p", "lookup-recent-title", "Recently viewed"), this.list, this.forget);
    }

    show() {
      const lines = this.read().filter(({ page }) => page !== this.here).map(({ page, title }, i) => {
        const link = document.createElement("a");
        link.textContent = title;
        link.href = this.root + page;
        link.tabIndex = i === 0 ? 0 : -1;
        const line = document.createElement("li");
        line.append(link);
        return line;
      });
      this.list.replaceChildren(...lines);
      this.links = lines.map((line) => line.firstChild);
      this.box.hidden = lines.length === 0;
    }

    hide() {
      this.box.hidden = true;
      this.links = [];
    }
  }

  window.crossrefLookup.Recent = Recent;
})();
