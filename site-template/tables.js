// Lets a reader sort the rows of a table and narrow them down. Without scripts the table is whole and in a useful order.
(() => {
  "use strict";

  // Numbers before texts; cells without anything last, whichever way the column is sorted.
  const compare = (one, other, direction) => {
    if (one.empty || other.empty) return one.empty - other.empty;
    const order = one.key !== null && other.key !== null ? one.key - other.key : one.text < other.text ? -1 : one.text > other.text ? 1 : 0;
    return order * direction;
  };

  const valueOf = (row, column) => {
    const cell = row.cells[column];
    const text = cell.textContent.trim().replace(/\s+/g, " ").toLowerCase();
    const key = cell.dataset.key !== undefined ? Number(cell.dataset.key) : /^[\d,]+(\.\d+)?$/.test(text) ? Number(text.replaceAll(",", "")) : null;
    return { text, key, empty: text === "" ? 1 : 0 };
  };

  class Table {
    constructor(table, number) {
      this.table = table;
      this.body = table.tBodies[0];
      this.rows = [...this.body.rows];
      this.texts = this.rows.map((row) => row.textContent.toLowerCase());
      this.sortKey = number ? `sort${number}` : "sort";
      this.rowsKey = number ? `rows${number}` : "rows";
      this.headers = [...table.tHead.rows[0].cells];
      this.headers.forEach((header, column) => this.makeSortable(header, column));
      this.makeFilter(number);
      const state = new URLSearchParams(window.location.hash.slice(1));
      const [column, direction] = (state.get(this.sortKey) || "").split("-");
      if (this.headers[column]) this.sort(Number(column), direction === "down" ? -1 : 1);
      this.input.value = state.get(this.rowsKey) || "";
      this.filter();
    }

    makeSortable(header, column) {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      button.textContent = header.textContent;
      header.replaceChildren(button);
      button.addEventListener("click", () => {
        this.sort(column, header.getAttribute("aria-sort") === "ascending" ? -1 : 1);
        this.remember();
      });
    }

    makeFilter(number) {
      const bar = document.createElement("p");
      bar.className = "narrow";
      const label = document.createElement("label");
      this.input = document.createElement("input");
      this.input.type = "search";
      this.input.id = `narrow-${number}`;
      label.htmlFor = this.input.id;
      label.textContent = "Show only rows with";
      this.status = document.createElement("span");
      this.status.setAttribute("role", "status");
      bar.append(label, " ", this.input, " ", this.status);
      (this.table.closest(".scroll") || this.table).before(bar);
      this.input.addEventListener("input", () => { this.filter(); this.remember(); });
    }

    sort(column, direction) {
      const values = new Map(this.rows.map((row) => [row, valueOf(row, column)]));
      const sorted = [...this.rows].sort((one, other) => compare(values.get(one), values.get(other), direction));
      this.body.append(...sorted);
      this.headers.forEach((header, i) => {
        if (i === column) header.setAttribute("aria-sort", direction > 0 ? "ascending" : "descending");
        else header.removeAttribute("aria-sort");
      });
      this.sorted = { column, direction };
    }

    filter() {
      const words = this.input.value.toLowerCase().split(/\s+/).filter(Boolean);
      let shown = 0;
      this.rows.forEach((row, i) => {
        row.hidden = !words.every((word) => this.texts[i].includes(word));
        if (!row.hidden) shown += 1;
      });
      this.status.textContent = words.length ? `${shown} of ${this.rows.length} rows` : "";
    }

    // The address carries the state, so that going back, or a note of the address, brings it again.
    remember() {
      // A plain place on the page, such as #sheet, is no state.
      const state = new URLSearchParams(window.location.hash.includes("=") ? window.location.hash.slice(1) : "");
      if (this.input.value) state.set(this.rowsKey, this.input.value);
      else state.delete(this.rowsKey);
      if (this.sorted) state.set(this.sortKey, `${this.sorted.column}-${this.sorted.direction > 0 ? "up" : "down"}`);
      const fragment = state.toString();
      window.history.replaceState(null, "", fragment ? `#${fragment}` : window.location.pathname + window.location.search);
    }
  }

  document.querySelectorAll("table.sortable").forEach((table, number) => new Table(table, number));
})();
