// A compression spring: as SpringCalculator and its room Springs in C#, line by line.
(() => {
  "use strict";

  window.crossrefCalculators.all["spring"] = (inputs, { line, figure, number, interval, workedOut }, tables) => {
    const { multiply, divide, subtract, add } = interval;
    const [wire, coils] = [inputs.measure("wire"), inputs.measure("coils")];
    const ends = tables.springs.ends.find((e) => e.name === inputs.text("ends"));
    const material = tables.springs.wires.find((w) => w.name === inputs.text("material"));
    if (inputs.has("outside") === inputs.has("mean")) inputs.refuse("outside", "write either the outside or the mean diameter");
    const mean = inputs.measure("mean") ?? subtract(inputs.measure("outside") ?? 0, wire);
    if (!inputs.problems.length && mean.low <= wire.high) inputs.refuse(inputs.has("mean") ? "mean" : "outside", "the coil is too small for this wire");
    const active = subtract(coils, ends.idle);
    if (active.low <= 1e-9) inputs.refuse("coils", `write more than ${ends.idle} coils; with these ends so many do not work`);
    const [length, free] = [inputs.measure("length"), inputs.measure("free-length")];
    if (length && !free) inputs.refuse("free-length", "write the free length too");
    if (length && free && free.low < length.high) inputs.refuse("length", "write a length below the free length, also with both uncertainties");
    if (inputs.problems.length) return null;

    const index = divide(mean, wire);
    const rate = divide(
      [1000, wire, wire, wire, wire].reduce(multiply, material.shear),
      [mean, mean, mean, active].reduce(multiply, 8));
    const touching = multiply(add(coils, ends.extra), wire);
    const lines = [
      line("mean diameter", figure(mean, 3, "mm"), inputs.has("mean") ? "as written" : "outside diameter less one wire"),
      line("coils that work", figure(active, 2, ""), `${ends.name} ends: ${number(ends.idle, 0)} fewer than in all`),
      line("coil index", figure(index, 2, ""), "mean diameter by wire; EN 15800 is for 4 to 20"),
      line("shear modulus", figure(material.shear, 1, "GPa"), `${material.label} at room temperature: ${material.source}`),
      line("rate", figure(rate, 3, "N/mm"), "G × d⁴ / (8 × D³ × n); wire read 1 % too thick makes it 4 % too stiff"),
      line("coils touch at", figure(touching, 2, "mm"), ends.extra === 0 ? "coils × wire" : "(coils + 1) × wire"),
    ];
    let answer = `Its rate is ${figure(rate, 3, "N/mm")}.`;
    const cautions = [];
    if (length) {
      const travel = subtract(free, length);
      const force = multiply(rate, travel);
      lines.push(line("travel", figure(travel, 2, "mm"), "free length less fitted length"));
      const never = length.high < touching.low - 1e-9;
      lines.push(line("force", never ? "unknown" : figure(force, 2, "N"), never ? "the coils touch before" : "rate × travel"));
      answer += never
        ? ` It cannot be pressed to ${figure(length, 2, "mm")}: its coils touch at ${figure(touching, 2, "mm")}.`
        : ` At ${figure(length, 2, "mm")} it pushes with ${figure(force, 2, "N")}.`;
      if (!never && length.low < touching.high - 1e-9) cautions.push("At that length the coils may touch: the force is then far higher than worked out here.");
    }
    if (index.low < 4 - 1e-9 || index.high > 20 + 1e-9)
      cautions.push("So tight or so wide a coil is outside the usual range of 4 to 20; the formula is less sure there.");
    cautions.push("Replace pressure springs in pairs: an old one and a new one press unevenly (trade practice).");
    cautions.push("A spring under load flies. Release it first, hold it, and wear eye protection.");
    const sizes = { rate: workedOut(rate) };
    for (const name of ["wire", "free-length"]) if (inputs.has(name)) sizes[name] = inputs.quantity(name);
    return { lines, answer, cautions, sought: { kind: "spring", sizes } };
  };
})();
