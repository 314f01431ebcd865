// Bearing from its number or its sizes; says line by line what BearingCalculator of Crossref.Core says.
(() => {
  "use strict";

  const SIZES = ["bore", "outside", "width"];
  const SHOWN = 12;
  const NOT_ONE = "that is no bearing number that can be read; write it like 6001-2RS, 61901, F688ZZ or MR105";
  const HEAD = /^(SS|S|W)?[ -]?(MF|MR|F)?[ -]?((?:6[0-4]|61[789]|628|638) ?\/ ?(?!2(?:RS|RZ|Z))[0-9]{1,3}|[0-9]{2,6})((?:[^0-9].*)?)$/;

  const withoutClosure = (designation) => designation.replace(/(?:ZZ|-2Z)$/, "");
  const isShielded = (row) => row.form === "shielded both sides";
  const anyClosure = (row) => row.form === "open or capped";
  const basicOf = (row) => (isShielded(row) ? withoutClosure(row.designation) : row.designation);
  const namesOf = (row) => [row.designation, ...row.alsoNamed].join(" = ");
  const flangedName = (number) => (number.startsWith("MR") ? `MF${number.slice(2)}` : `F${number}`);

  function byName(rows) {
    const names = new Map();
    for (const row of rows)
      for (const name of [row.designation, ...row.alsoNamed].map(withoutClosure)) if (!names.has(name)) names.set(name, row);
    return names;
  }

  // The table, and how a number is read by it (BearingTable, BearingReader, BearingWidth).
  class Book {
    constructor(tables) {
      Object.assign(this, tables);
      this.openByName = byName(this.rows.filter((r) => !isShielded(r)));
      this.shieldedByName = byName(this.rows.filter(isShielded));
    }

    open(number) { return this.openByName.get(number) ?? null; }
    withShields(number) { return this.shieldedByName.get(number) ?? null; }
    known(number) { return this.openByName.has(number) || this.shieldedByName.has(number); }
    // The band of a table by nominal size; null outside the table.
    band(bands, name, size) { return bands.find((b) => b.name === name && size > b.over && size <= b.including) ?? null; }

    width(number, shields) {
      const open = this.open(number);
      const listed = this.withShields(number);
      if ((open && anyClosure(open)) || shields === "open") return open?.width ?? null;
      if (shields === "2Z" && listed) return listed.width;
      const shielded = listed ?? this.withShields(open.designation);
      return open && shielded && open.width === shielded.width ? open.width : null;
    }

    row(number, shields) { return (shields === "2Z" ? this.withShields(number) : null) ?? this.open(number) ?? this.withShields(number); }

    // The flange may be another with shields; a closure that is not listed has it only where both are the same.
    flange(basic, shields) {
      const name = flangedName(basic);
      const fitting = this.flanges.filter((f) => withoutClosure(f.designation) === name
        && (f.form === "both" || (shields === "open" ? f.form === "open" : shields !== "2Z" || f.form === "shielded")));
      const sure = fitting.length === 1 && (shields === "open" || shields === "2Z" || fitting[0].form === "both");
      const alike = fitting.length === 2 && fitting[0].outside === fitting[1].outside && fitting[0].width === fitting[1].width;
      return sure || alike ? fitting[0] : null;
    }

    peel(word) {
      const whole = this.marks.find((m) => m.text === word);
      if (whole) return { found: [whole], left: "" };
      const found = [];
      while (word.length > 0) {
        const next = this.marks.find((m) => m.glued && word.startsWith(m.text) && !(/[0-9]$/.test(m.text) && /^[0-9]/.test(word.slice(m.text.length))));
        if (!next) break;
        found.push(next);
        word = word.slice(next.text.length);
      }
      return { found, left: word };
    }

    marksOf(rest) {
      const marks = [];
      for (const word of rest.split(/[ \-/,]/).filter(Boolean)) {
        let { found, left } = this.peel(word);
        if (left && found.some((m) => m.text.length === 1)) [found, left] = [[], word];
        marks.push(...found);
        if (left) marks.push({ text: left, says: "", value: "", meaning: "", glued: false });
      }
      return marks;
    }

    // The bearing, or { problem }.
    read(text) {
      const written = text.replace(/[a-z]/g, (c) => c.toUpperCase()).replace(/[\u2010-\u2015\u2212]/g, "-").replace(/[ \t\r\n\u00A0]+/g, " ").replace(/^ +| +$/g, "")
        .replace(/(?<![A-Z0-9])ABEC[ -]*([0-9])(?![0-9])/g, " ABEC$1 ").replace(/(?<![A-Z0-9])2[ -]+(?=RS|RZ|Z|TS)/g, "2");
      const head = HEAD.exec(written);
      if (/^[0-9.]+ ?(?:MM)? ?[X×*] ?[0-9]/.test(written)) return { problem: "those are sizes; give them as bore, outside and width" };
      if (/^(?:SS|S|W)?[ -]?F?R ?-?[0-9]/.test(written)) return { problem: "inch bearings are not in the table; give bore, outside and width as measured" };
      if (!head || written.length > 60) return { problem: NOT_ONE };
      const [, prefix = "", kind = ""] = head;
      let number = (kind.startsWith("M") ? "MR" : "") + head[3].replaceAll(" ", "");
      let rest = head[4];
      const shorter = number.slice(0, -1);
      if (!this.known(number) && number.endsWith("2") && this.known(shorter) && /^[RZ]/.test(rest)) {
        if (/^6(?:[0-9]{3}|2[23][0-9]{2}|30[0-9]{2})$/.test(number)) return { problem: `${number} is not in the table; write ${shorter}-2${rest} if that is meant` };
        [number, rest] = [shorter, `2${rest}`];
      } else if (!this.known(number)) {
        return { problem: `${number} is not in the table, which holds metric deep groove ball bearings with bores of 3 to 50 mm; give bore, outside and width as measured` };
      }

      const marks = this.marksOf(rest);
      const closures = said(marks, "closure");
      const clearances = said(marks, "clearance");
      const classes = said(marks, "class");
      const unread = marks.filter((m) => !m.says).map((m) => m.text).join(" ");
      const shields = closures[0] ?? (unread ? null : "open");
      const problem = this.problem(number, marks, closures, clearances, classes, shields);
      if (problem) return { problem };

      const basic = basicOf(this.open(number) ?? this.withShields(number));
      const row = this.row(number, shields);
      const flanged = kind === "F" || kind === "MF";
      const flange = flanged ? this.flange(basic, shields) : null;
      const width = this.width(number, shields);
      const bearing = {
        prefix, number, basic, row, width, flanged, flange, shields, marks, unread, bore: row.bore, outside: row.outside,
        clearance: clearances[0] ?? (unread ? null : "CN"), clearanceWritten: clearances.length > 0, class: classes[0] ?? "Normal",
      };
      return { bearing: { ...bearing, canonical: this.canonical(bearing), alsoNamed: alsoNamed(bearing) } };
    }

    problem(number, marks, closures, clearances, classes, shields) {
      const odd = marks.find((m) => !/^[A-Z0-9.+()]{1,16}$/.test(m.text));
      if (odd) return `'${odd.text}' is not part of any bearing number; leave it out`;
      const bore = marks.find((m) => /^[0-9]+(?:\.[0-9]+)?(?:MM|IN)?$/.test(m.text));
      if (bore) return `'${bore.text}' after ${number} may be a bore of its own (6202-10 is often 5/8 inch); leave it out and measure the bore`;
      if (marks.some((m) => m.text === "K")) return "K is a tapered bore, and the table holds cylindrical bores only";
      if (closures.length > 1) return "it names two closures; write the one that it has";
      if (clearances.length > 1 || classes.length > 1) return "it names two clearances or two tolerance classes; write the one that it has";
      return !this.open(number) && number.includes("/") && shields !== "2Z"
        ? `the table has ${number} with shields on both sides only; write ${number}-2Z if that is meant` : "";
    }

    canonical(b) {
      let number = this.width(b.basic, b.shields) === b.width ? b.basic : b.number;
      if (b.flanged) number = flangedName(number);
      const closure = b.shields === null || b.shields === "open" ? "" : `-${b.shields}`;
      const clearance = b.clearance === null || b.clearance === "CN" ? "" : `/${b.clearance}`;
      const tolerance = b.class === "Normal" ? "" : b.class === "P2" ? "/ABEC9" : `/${b.class}`;
      return b.prefix + number + closure + clearance + tolerance + b.marks.filter((m) => m.says === "" || m.says === "other").map((m) => ` ${m.text}`).join("");
    }

    // Smallest and largest sizes of class Normal; null where they are not known.
    allowed(bore, outside, width) {
      const of = (nominal, band) => (nominal !== null && band ? { low: nominal + band.low / 1000, high: nominal + band.high / 1000 } : null);
      return {
        bore: of(bore, this.band(this.limits, "delta_dmp", bore)),
        outside: of(outside, this.band(this.limits, "delta_Dmp", outside)),
        width: of(width, this.band(this.limits, "delta_Bs", bore)),
      };
    }
  }

  const said = (marks, what) => [...new Set(marks.filter((m) => m.says.split(" and ").includes(what))
    .map((m) => (m.says === what ? m.value : m.value.split(" ")[what === "class" ? 0 : 1])))];

  function alsoNamed(b) {
    const closure = isShielded(b.row) || b.shields === null || b.shields === "open" ? "" : `-${b.shields}`;
    const sure = !b.flanged && (anyClosure(b.row) || (isShielded(b.row) ? b.shields === "2Z" : b.shields === "open"));
    const names = [b.row.designation, ...b.row.alsoNamed].filter((n) => withoutClosure(n) !== b.basic);
    return sure ? names.map((n) => n + closure).join(", ") : "";
  }

  const boreSays = (number) => (number.includes("/") ? "after the stroke"
    : number.length === 3 || number.startsWith("MR") ? `last figure of ${number}` : `bore code ${number.slice(-2)}`);

  const ROUNDING = 1e-9;

  // How far a measured size is off its limits; known tells unknown from 0.
  function check(measured, limits) {
    if (!measured || !limits) return { off: 0, known: false };
    if (measured.low > limits.high + ROUNDING) return { off: measured.low - limits.high, known: true };
    return { off: measured.high < limits.low - ROUNDING ? measured.high - limits.low : 0, known: true };
  }
  const agrees = (c) => c.known && c.off === 0;
  const differs = (c) => c.known && c.off !== 0;

  function bearing(inputs, tools, tables) {
    const { figure, number, line } = tools;
    const book = new Book(tables.bearings);
    const mm = (x) => figure(x, 3, "mm");
    const checkText = (c) => (!c.known ? "unknown" : c.off === 0 ? "agrees" : mm(Math.abs(c.off)) + (c.off > 0 ? " over" : " under"));
    const given = SIZES.some((s) => inputs.has(s));
    const text = inputs.text("designation");
    const read = text === null ? {} : book.read(text);
    if (read.problem) inputs.refuse("designation", read.problem);
    else if (!read.bearing && !given) inputs.refuse("designation", "write the bearing's number, or what was measured of it");
    const [boreSize, outsideSize] = [inputs.measure("bore"), inputs.measure("outside")];
    if (boreSize && outsideSize && boreSize.low >= outsideSize.high)
      inputs.refuse("outside", "write the outside diameter, which is larger than the bore; these two look swapped");
    if (inputs.problems.length) return null;

    const lines = [];
    let contradicted = false;
    const say = (what, shown, how) => lines.push(line(what, shown, how));
    const range = (band) => `over ${number(band.over, 1)} to ${figure(band.including, 1, "mm")}`;

    function numberLines(b) {
      const { bore, outside, width, row } = b;
      const limits = book.allowed(bore, outside, width);
      const source = `${row.series.startsWith("maker") ? "makers' own metric size" : `ISO 15, series ${row.series}`}; ${row.makers === 1 ? "one maker's handbook" : `${row.makers} makers' handbooks agree`}`;
      const meaning = (what) => {
        const mark = b.marks.find((m) => m.says.includes(what));
        return `${mark.text}: ${mark.meaning}`;
      };
      say("number", b.canonical, b.alsoNamed ? `also named ${b.alsoNamed}` : "one way of writing it");
      if (b.prefix) say("letter in front", b.prefix, "stainless steel with most makers; not standardised");
      say("bore", mm(bore), boreSays(b.number));
      say("outside", mm(outside), source);
      if (width !== null) say("width", mm(width), source);
      else {
        const open = book.open(b.number);
        const shielded = book.withShields(open?.designation ?? b.number);
        const listed = [open && `${mm(open.width)} open`, shielded && `${mm(shielded.width)} with two shields`].filter(Boolean).join(", ");
        say("width", "unknown", `the table has ${listed}; this closure may be wider: measure`);
      }
      const narrower = b.class === "Normal" ? "" : `; ${b.class} is narrower and not in the table`;
      const sayLimits = (what, sizes, band, symbol) => sizes && say(`${what} limits`, mm(sizes), `ISO 492 class Normal, ${symbol} ${range(band)}: ${figure(band, 0, "µm")}${narrower}`);
      sayLimits("bore", limits.bore, book.band(book.limits, "delta_dmp", bore), "mean bore");
      sayLimits("outside", limits.outside, book.band(book.limits, "delta_Dmp", outside), "mean outside diameter");
      sayLimits("width", limits.width, book.band(book.limits, "delta_Bs", bore), "ring width by bore");
      if (!b.flanged) say("flange", "none", "no F in front");
      else if (b.flange) say("flange", `${mm(b.flange.outside)} across, ${mm(b.flange.width)} wide`, "F in front; one maker's handbook");
      else say("flange", "unknown", "F in front; the table has no flange for this number and closure: measure");
      if (b.shields === null) say("shields", "unknown", "what could not be read may be the closure");
      else say("shields", b.shields, b.marks.some((m) => m.says === "closure") ? meaning("closure") : "nothing is marked");
      if (b.clearance === null) say("clearance", "unknown", "what could not be read may be the clearance");
      else say("clearance", b.clearance, b.clearanceWritten ? meaning("clearance") : "nothing is marked, so normal");
      const play = b.clearance === null ? null : book.band(book.clearances, b.clearance, bore);
      if (b.clearance === null) say("radial clearance", "unknown", "the group is unknown");
      else if (play) say("radial clearance", figure(play, 0, "µm"), `ISO 5753-1, group ${b.clearance}, bore ${range(play)}, before fitting`);
      else say("radial clearance", "unknown", `the table has no group ${b.clearance} for this bore`);
      for (const mark of b.marks.filter((m) => m.says === "other")) say(`mark ${mark.text}`, mark.meaning, "the maker's own letters");
      if (b.unread) say("not read", b.unread, "the maker's own letters, such as grease or cage");
      const sizes = `${number(bore, 3)} × ${number(outside, 3)}` + (width !== null ? ` × ${mm(width)}` : " mm, width unknown");
      const flange = !b.flanged ? "" : b.flange ? `, flange ${mm(b.flange.outside)}` : ", flange unknown";
      return `${b.canonical} is ${sizes}${flange}, shields ${b.shields ?? "unknown"}, clearance ${b.clearance ?? "unknown"}.`;
    }

    function compare(b) {
      const limits = book.allowed(b.bore, b.outside, b.width);
      const checks = SIZES.map((name) => {
        const [measured, allowed] = [inputs.measure(name), limits[name]];
        const c = check(measured, allowed);
        const how = !measured ? "not measured" : !allowed ? "the number leaves it open" : `measured ${mm(measured)}, allowed ${mm(allowed)}`;
        say(`${name} in hand`, differs(c) ? `differs, ${checkText(c)}` : checkText(c), how);
        return { name, c };
      });
      contradicted = checks.some((x) => differs(x.c));
      const part = (verb, holds) => {
        const names = checks.filter((x) => holds(x.c)).map((x) => x.name);
        return names.length ? `${verb} ${names.join(", ")}` : "";
      };
      const parts = [part("agrees in", agrees), part("differs in", differs), part("is unknown in", (c) => !c.known)];
      return `The piece in hand ${parts.filter(Boolean).join("; ")}.`;
    }

    function describe(row) {
      const flange = book.flanges.find((f) => withoutClosure(f.designation) === flangedName(basicOf(row)) && (f.form === "both" || (f.form === "shielded") === isShielded(row)));
      return `${number(row.bore, 3)} × ${number(row.outside, 3)} × ${mm(row.width)}, ${row.form}${flange ? `; ${flange.designation} with a flange` : ""}`;
    }

    function find(asked) {
      const measured = Object.fromEntries(SIZES.map((s) => [s, inputs.measure(s)]));
      const matches = book.rows.map((row) => {
        const limits = book.allowed(row.bore, row.outside, row.width);
        const checks = Object.fromEntries(SIZES.map((s) => [s, check(measured[s], limits[s])]));
        return { row, checks, possible: !SIZES.some((s) => differs(checks[s])), distance: SIZES.reduce((sum, s) => sum + Math.abs(checks[s].off), 0) };
      }).sort((a, b) => a.distance - b.distance);
      const possible = matches.filter((m) => m.possible);
      const missing = SIZES.filter((s) => !inputs.has(s));
      for (const m of possible.slice(0, SHOWN)) say("can be", namesOf(m.row), describe(m.row) + (missing.length ? `; ${missing.join(", ")} not measured` : ""));
      if (possible.length > SHOWN) say("can be", `${possible.length - SHOWN} more`, "measure what is missing, or closer");
      if (!possible.length) say("can be", "nothing in the table", "metric deep groove ball bearings, bores of 3 to 50 mm, limits of ISO 492 class Normal");
      const near = matches.filter((m) => !m.possible).slice(0, 3);
      for (const m of near) say("near miss", namesOf(m.row), `${describe(m.row)}; measured bore ${checkText(m.checks.bore)}, outside ${checkText(m.checks.outside)}, width ${checkText(m.checks.width)}`);
      if (!asked) return "";
      if (!possible.length) return `No bearing in the table has these sizes. Nearest: ${namesOf(near[0].row)}.`;
      if (possible.length === 1) return `It can be ${namesOf(possible[0].row)}, by its sizes.`;
      if (possible.length <= SHOWN) return `By its sizes it can be ${possible.map((m) => m.row.designation).join(", ")}.`;
      return `${possible.length} bearings in the table can have these sizes. Measure what is missing, or closer.`;
    }

    const answer = [];
    if (read.bearing) answer.push(numberLines(read.bearing));
    if (read.bearing && given) {
      const compared = compare(read.bearing);
      answer.splice(contradicted ? 0 : 1, 0, compared);
    }
    if (given) answer.push(find(!read.bearing || contradicted));

    const cautions = [
      "An interchange needs the same sizes, flange and clearance, a closure at least as good, and grease and cage that stand at least the same heat.",
      "What heat grease and cage stand is not in the number. In a hot place, such as a fixing unit, they decide.",
    ];
    if (given) {
      cautions.push("The sizes say nothing of clearance and closure: read them off the ring.");
      cautions.push("A row marked open holds for the open bearing; with shields or seals a small bearing may be wider.");
      cautions.push("Another kind of bearing, such as one that turns one way only, may have the same sizes and not do the same work (from memory).");
    }
    if (contradicted) cautions.unshift("Number and piece contradict each other. Parts on record are looked for by what was measured alone; read the number again.");
    if (SIZES.some((s) => inputs.has(s) && tools.interval.halfWidth(inputs.measure(s)) === 0))
      cautions.push("A size without its uncertainty counts as exact. Write 12 +/- 0.02 for a calliper.");

    const sizes = {};
    const named = contradicted ? null : read.bearing;
    for (const name of SIZES) {
      const known = named?.[name] ?? null;
      if (known !== null) sizes[name] = { value: known, uncertainty: 0 };
      else if (inputs.has(name)) sizes[name] = inputs.quantity(name);
    }
    if (named && !named.flanged) sizes.flange = "none";
    else if (named?.flange) sizes.flange = number(named.flange.outside, 3);
    return { lines, answer: answer.filter(Boolean).join(" "), cautions, sought: { kind: "bearing", sizes } };
  }

  window.crossrefCalculators.all.bearing = bearing;
})();
