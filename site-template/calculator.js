// What every calculator of the site stands on: reading what was written, figures as text, intervals. The commands of the
// same names do the same in C# (Crossref.Core/Arithmetic), and the tests hold the two against each other line by line.
// A calculator is a function (inputs, tools, tables, record) → { lines, answer, cautions, sought }, kept by its name in
// crossrefCalculators.all; null after it has refused an input. The form is wired in calculator-form.js.
(() => {
  "use strict";

  // All values that a figure may have. Sums and products hold every value that two of them may give.
  const hull = (...ends) => ({ low: Math.min(...ends), high: Math.max(...ends) });
  const asInterval = (x) => (typeof x === "number" ? { low: x, high: x } : x);
  const interval = {
    exactly: (x) => ({ low: x, high: x }),
    around: (x, uncertainty) => ({ low: x - uncertainty, high: x + uncertainty }),
    middle: (a) => (a.low + a.high) / 2,
    halfWidth: (a) => (a.high - a.low) / 2,
    holds: (a, x) => asInterval(x).low >= a.low && asInterval(x).high <= a.high,
    meets: (a, b) => a.low <= b.high && b.low <= a.high,
    add: (a, b) => ((a = asInterval(a)), (b = asInterval(b)), { low: a.low + b.low, high: a.high + b.high }),
    subtract: (a, b) => ((a = asInterval(a)), (b = asInterval(b)), { low: a.low - b.high, high: a.high - b.low }),
    multiply: (a, b) => ((a = asInterval(a)), (b = asInterval(b)), hull(a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high)),
    divide: (a, b) => ((a = asInterval(a)), (b = asInterval(b)), hull(a.low / b.low, a.low / b.high, a.high / b.low, a.high / b.high)),
    rising: (a, f) => ({ low: f(a.low), high: f(a.high) }),
    falling: (a, f) => ({ low: f(a.high), high: f(a.low) }),
  };

  // The exact binary value, rounded half away from zero, without the noughts at the end.
  function number(value, decimals) {
    const size = Math.abs(value);
    // From 1e21 on toFixed writes exponents; there every number is a whole one.
    let text = size >= 1e21 && size < Infinity ? BigInt(size).toString() : size.toFixed(decimals);
    if (value < 0) text = "-" + text;
    if (text.includes(".")) text = text.replace(/0+$/, "").replace(/\.$/, "");
    return text === "-0" ? "0" : text;
  }

  function figure(value, decimals, unit) {
    const { low, high } = asInterval(value);
    const [from, to] = [number(low, decimals), number(high, decimals)];
    const text = from === to ? from : `${from} to ${to}`;
    return unit === "" ? text : unit === "°" || unit === "%" ? text + unit : `${text} ${unit}`;
  }

  // As Shown: figures of any size with about four digits.
  function shown(value, unit) {
    const size = Math.abs(asInterval(value).high);
    return figure(value, size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4, unit);
  }

  const line = (what, text, how) => ({ what, figure: text, how });

  const WRITTEN = /^(-?[0-9]{1,15}(?:\.[0-9]{1,12})?)\s*(?:(?:\+\/-|±)\s*([0-9]{1,15}(?:\.[0-9]{1,12})?)\s*)?([^\s0-9.,+\-±/][^\s]*)?$/;

  // A decimal number times a unit's factor, rounded once, as C# does: 0.669 in are 16.9926 mm, not 16.992599999999996.
  function inOwnUnit(text, factor) {
    const places = (number) => (number.split(".")[1] || "").length;
    const digits = (number) => BigInt(number.replace(".", ""));
    return Number(digits(text) * digits(`${factor}`)) / Number(`1e${places(text) + places(`${factor}`)}`);
  }

  // Reads a quantity as QuantityParser does: { value, uncertainty } in the dimension's unit, or { problem }.
  function quantity(text, dimension, units) {
    const known = units[dimension];
    const sample = known[0].symbol;
    const match = WRITTEN.exec(text.trim());
    if (!match) {
      if (/^\s*(?:[0-9]+[\s-]+)?[0-9]+\s*\/\s*[0-9]/.test(text)) return { problem: "write one number without a stroke, such as 0.5 for 1/2" };
      if (/^\s*[0-9]+(?:\.[0-9]+)?\s*[-\u2013]\s*[0-9]/.test(text)) return { problem: "write a range as its middle and what it may be off, such as 235 +/- 5 for 230-240" };
      if (/^\s*-?[0-9]+,[0-9]/.test(text)) {
        const several = /[,.][0-9]+[,.]/.test(text);
        return { problem: several ? `write the number without commas: ${text.trim().replaceAll(",", "")}` : `write the decimal point as a point: ${text.trim().replaceAll(",", ".")}` };
      }
      return { problem: sample ? `write a number, such as 17 or 17.02 +/- 0.02 ${sample}` : "write a number, such as 17" };
    }
    const symbol = match[3] || "";
    const unit = symbol === "" ? known[0] : known.find((u) => u.symbol === symbol);
    if (!unit) {
      const symbols = known.map((u) => u.symbol).filter(Boolean).join(", ");
      return { problem: symbols ? `the unit '${symbol}' is not known here; write one of ${symbols}` : "write a plain number without a unit" };
    }
    const [value, uncertainty] = [match[1], match[2] || "0"];
    if (Math.abs(Number(value)) > 1e9 || Number(uncertainty) > 1e9) return { problem: "the number is out of range; write one below a thousand million" };
    return { value: inOwnUnit(value, unit.factor), uncertainty: inOwnUnit(uncertainty, unit.factor) };
  }

  // What was written, read as what it was asked for; everything that is wrong is collected.
  class Inputs {
    constructor(declared, texts, units) {
      this.texts = new Map();
      this.quantities = new Map();
      this.problems = [];
      for (const input of declared) {
        const text = (texts[input.name] || "").trim() || input.default;
        if (text) this.read(input, text, units);
        else if (input.required) this.refuse(input.name, `write ${lower(input.label)}${input.example ? `, such as ${input.example}` : input.choices.length ? `, one of ${input.choices.join(", ")}` : ""}`);
      }
    }

    has(name) { return this.texts.has(name) || this.quantities.has(name); }
    text(name) { return this.texts.get(name) ?? null; }
    measure(name) {
      const read = this.quantities.get(name);
      return read ? interval.around(read.value, read.uncertainty) : null;
    }
    value(name) { return this.quantities.get(name)?.value ?? null; }
    count(name) { return this.value(name); }
    quantity(name) { return this.quantities.get(name) ?? null; }
    refuse(name, message) { this.problems.push({ input: name, message }); }

    read(input, text, units) {
      if (!input.measures) {
        const choice = input.choices.find((c) => c.toLowerCase() === text.toLowerCase());
        if (!input.choices.length) this.texts.set(input.name, text);
        else if (choice) this.texts.set(input.name, choice);
        else this.refuse(input.name, `'${text}' is none of ${input.choices.join(", ")}`);
        return;
      }
      const read = quantity(text, input.measures, units);
      if (read.problem) this.refuse(input.name, read.problem);
      else if (input.whole && (!Number.isInteger(read.value) || read.value < least(input) || read.value > 100000 || read.uncertainty !== 0))
        this.refuse(input.name, `write a whole number from ${least(input)} to 100000`);
      else if (!input.mayBeZeroOrLess && read.value - read.uncertainty <= 0) this.refuse(input.name, "write a number above zero, also after its uncertainty is taken off");
      else this.quantities.set(input.name, read);
    }
  }

  // As WorkingTolerance.Of: how far apart two sizes may be, and why.
  function tolerance(bands, value) {
    const { width, share, reason } = bands.find((band) => value <= band.upTo + 1e-9);
    return { width: width ?? share * Math.abs(value), reason };
  }

  // As SizeBook.Compare: the larger of the measuring uncertainty and the working tolerance counts. Without bands, words.
  function compare(bands, a, b) {
    if (a === undefined || b === undefined) return { agreement: "unknown", how: "" };
    const decide = (same, how) => ({ agreement: same ? "agrees" : "differs", how });
    if (!bands) return decide(a.trim().toUpperCase() === b.trim().toUpperCase(), "must be the same word");
    const { width, reason } = tolerance(bands, Math.max(a.value, b.value));
    const measuring = Math.sqrt(a.uncertainty * a.uncertainty + b.uncertainty * b.uncertainty);
    const [allowed, how] = measuring > width ? [measuring, "measuring uncertainty"] : [width, reason];
    return decide(Math.abs(a.value - b.value) <= allowed + 1e-9, how);
  }

  // As Sought.WorkedOut.
  const workedOut = (size) => ({ value: Number(number(interval.middle(size), 9)), uncertainty: Number(number(interval.halfWidth(size), 9)) });

  const least = (input) => (input.mayBeZeroOrLess ? 0 : 1);
  const lower = (label) => (label.length > 1 && label[1] !== label[1].toUpperCase() ? label[0].toLowerCase() + label.slice(1) : label);

  const tools = { interval, number, figure, shown, line, tolerance, compare, workedOut };

  // Runs a calculator on what was written: { working } or { problems }.
  function run(name, declared, texts, tables, record) {
    const inputs = new Inputs(declared, texts, tables.units);
    if (inputs.problems.length) return { problems: inputs.problems };
    const working = window.crossrefCalculators.all[name](inputs, tools, tables, record);
    return inputs.problems.length ? { problems: inputs.problems } : { working };
  }

  window.crossrefCalculators = { all: {}, run, tools, quantity };
})();
