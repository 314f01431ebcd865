// A hole and a shaft, cold and hot: as FitCalculator and its room Limits and Expansion in C#, line by line.
(() => {
  "use strict";

  const BURNS = 50;
  const FINEST = 5;
  const COARSEST = 11;
  const READ = /^([A-Z]{1,2}|[a-z]{1,2})([0-9]{1,2})$/;
  const CARRIES = "it carries d e f g h js k m n p for shafts, D E F G H JS N P and, to grade 8, K M for holes";

  function shaftDeviation(letters, grade, band) {
    return letters === "k" && grade > 7 ? 0 : band.deviations[letters] ?? null;
  }

  function holeDeviation(letters, grade, band) {
    const shaft = band.deviations[letters.toLowerCase()] ?? null;
    if (((letters === "K" || letters === "M") && grade > 8) || shaft === null) return null;
    if (letters === "N" && grade > 8 && band.over > 0) return 0;
    const raised = (["K", "M", "N"].includes(letters) && grade <= 8) || (letters === "P" && grade <= 7);
    const step = grade - FINEST;
    const delta = band.over === 0 ? 0 : step === 0 ? band.delta5 : band.widths[step] - band.widths[step - 1];
    return (raised ? delta : 0) - shaft;
  }

  // { lower, upper } in micrometres, or { problem }.
  function deviations(letters, grade, nominal, bands) {
    const band = bands.find((b) => nominal <= b.upTo + 1e-9);
    if (!band) return { problem: "the table carries nominal sizes to 120 mm" };
    if (grade < FINEST || grade > COARSEST) return { problem: "the table carries grades 5 to 11" };
    const width = band.widths[grade - FINEST];
    if (letters === "js" || letters === "JS") return { lower: -width / 2, upper: width / 2 };
    const isHole = letters[0] < "a";
    const deviation = isHole ? holeDeviation(letters, grade, band) : shaftDeviation(letters, grade, band);
    if (deviation === null) return { problem: `the table does not carry ${letters}${grade}; ${CARRIES}` };
    const lower = isHole ? letters[0] <= "H" : letters[0] > "h";
    return lower ? { lower: deviation, upper: deviation + width } : { lower: deviation - width, upper: deviation };
  }

  const kind = (gap) => (gap.low >= -1e-9 ? "clearance fit" : gap.high <= 1e-9 ? "interference fit" : "transition fit");

  function words(gap, decimals, { number, figure }) {
    if (gap.low >= -1e-9) return `loose by ${figure(gap, decimals, "mm")}`;
    if (gap.high <= 1e-9) return `tight by ${figure({ low: -gap.high, high: -gap.low }, decimals, "mm")}`;
    return `between tight by ${number(-gap.low, decimals)} and loose by ${figure(gap.high, decimals, "mm")}`;
  }

  function strainOf(ranges, from, to) {
    if (from > to) {
      const back = strainOf(ranges, to, from);
      return back && { low: -back.high, high: -back.low };
    }
    if (from < ranges[0].from - 1e-9 || to > ranges.at(-1).to + 1e-9) return null;
    let [low, high] = [0, 0];
    for (const range of ranges) {
      const length = Math.min(to, range.to) - Math.max(from, range.from);
      if (length <= 0) continue;
      low += range.coefficient.low * length;
      high += range.coefficient.high * length;
    }
    return { low: low / 1e6, high: high / 1e6 };
  }

  function strain(material, start, end) {
    const corners = [[start.low, end.low], [start.low, end.high], [start.high, end.low], [start.high, end.high]]
      .map(([from, to]) => strainOf(material.ranges, from, to));
    if (corners.includes(null)) return null;
    return { low: Math.min(...corners.map((c) => c.low)), high: Math.max(...corners.map((c) => c.high)) };
  }

  function bears(material, temperature) {
    if (!material.service) return "not on record";
    if (temperature.high <= material.service.low + 1e-9) return "yes";
    return temperature.low > material.service.high + 1e-9 ? "not for this temperature" : "doubtful";
  }

  function side(inputs, tools, bands, which, start, lines) {
    const { line, figure, number, interval } = tools;
    const measured = inputs.measure(`${which}-size`);
    if (measured) lines.push(line(which, figure(measured, 4, "mm"), "as measured"));
    const text = inputs.text(which);
    if (text === null) return measured;
    const nominal = inputs.value("size");
    const read = READ.exec(text);
    if (nominal === null) inputs.refuse("size", "write the nominal size, such as 25");
    else if (!read || (read[1][0] < "a") !== (which === "hole"))
      inputs.refuse(which, which === "hole" ? "write a hole's class alone, with a capital, such as H7" : "write a shaft's class alone, with a small letter, such as g6");
    else {
      const written = `${read[1]}${Number(read[2])}`;
      const deviation = deviations(read[1], Number(read[2]), nominal, bands);
      if (deviation.problem) inputs.refuse(which, deviation.problem);
      else if (!measured && (start.low !== 20 || start.high !== 20))
        inputs.refuse("start", "limits of a class hold at 20 °C; write what was measured, or leave this at 20");
      else {
        const limits = { low: nominal + deviation.lower / 1000, high: nominal + deviation.upper / 1000 };
        const how = `ISO 286-1 at 20 °C: ${number(deviation.lower, 1)} to ${number(deviation.upper, 1)} µm on ${figure(nominal, 4, "mm")}`;
        if (!measured) {
          lines.push(line(which, figure(limits, 4, "mm"), `${written} by ${how}`));
          return limits;
        }
        const wide = { low: limits.low - 1e-9, high: limits.high + 1e-9 };
        const standing = interval.holds(wide, measured) ? "inside" : interval.meets(wide, measured) ? "doubtful" : "outside";
        lines.push(line(`${which} against ${written}`, standing, `${figure(limits, 4, "mm")}; ${how}`));
      }
    }
    return measured;
  }

  function part(what, material, start, hot, size, lines, cautions, { line, figure, interval }) {
    if (!material) {
      lines.push(line(what, "unknown", "no material given"));
      cautions.push(`No material is named for the ${what}, so its growth is unknown.`);
      return null;
    }
    const [standing, warm] = [bears(material, hot), figure(hot, 1, "°C")];
    lines.push(line(what, material.label, material.note ? `${material.source}; ${material.note}` : material.source));
    lines.push(line(`${what} bears ${warm}`, standing,
      material.service ? `continuous service ends at ${figure(material.service, 0, "°C")}, by source` : "no service temperature on record"));
    if (standing === "doubtful") cautions.push(`${material.label} is doubtful at ${warm}: sources end at ${figure(material.service, 0, "°C")}.`);
    if (standing === "not for this temperature")
      cautions.push(`${material.label} is not for ${warm}: continuous service ends at ${figure(material.service.high, 0, "°C")}.`);
    const [sure, reach] = [material.ranges[0].to, material.ranges.at(-1).to];
    const grown = strain(material, start, hot);
    if (!grown) cautions.push(`${material.label}: expansion is on record from 0 to ${figure(reach, 0, "°C")} only.`);
    else if (Math.max(start.high, hot.high) > sure + 1e-9) cautions.push(`${material.label}: above ${figure(sure, 0, "°C")} its growth is an estimate, widened upwards.`);
    const how = `size × expansion (millionths per kelvin) × rise; published to ${figure(sure, 0, "°C")}${reach > sure ? `, widened to ${figure(reach, 0, "°C")}` : ""}`;
    lines.push(line(`${what} grows by`, grown ? figure(interval.multiply(size, grown), 3, "mm") : "unknown", how));
    return grown;
  }

  function heat(inputs, tools, materials, start, hot, hole, shaft, lines, cautions) {
    const { line, figure, interval } = tools;
    const warm = figure(hot, 1, "°C");
    const named = (which) => materials.find((m) => m.name === inputs.text(which));
    const opens = part("outer part", named("outer"), start, hot, hole, lines, cautions, tools);
    const closes = part("inner part", named("inner"), start, hot, shaft, lines, cautions, tools);
    if (hot.high > BURNS) cautions.push("Hot parts burn. Wait until they are cold, and measure them cold: a warm part reads large.");
    if (!opens || !closes) {
      lines.push(line("gap when hot", "unknown", "the growth of both parts must be known"));
      return ` The gap at ${warm} is unknown.`;
    }
    const change = interval.subtract(interval.multiply(hole, opens), interval.multiply(shaft, closes));
    const gap = interval.add(interval.subtract(hole, shaft), change);
    lines.push(line("gap change", figure(change, 3, "mm"), "outer part's growth less inner part's; above zero it opens"));
    lines.push(line("gap when hot", figure(gap, 3, "mm"), "both parts warm through and free to grow"));
    if (gap.low < -1e-9)
      cautions.push("Where the parts may press on each other when hot, plastic creeps and is loose once cold; the figure is for parts free to grow.");
    cautions.push("Expansion is from handbooks, and filled grades grow less. The maker's data sheet decides.");
    return ` At ${warm} ${words(gap, 3, tools)}.`;
  }

  window.crossrefCalculators.all["fit"] = (inputs, tools, tables) => {
    const { line, figure, interval } = tools;
    const [lines, cautions] = [[], []];
    const size = inputs.measure("size");
    if (size && interval.halfWidth(size) > 0) inputs.refuse("size", "a nominal size has no uncertainty; write a measured one as the hole's or the shaft's");
    if (!["hole", "hole-size", "shaft", "shaft-size"].some((name) => inputs.has(name)))
      inputs.refuse("hole", "write the hole or the shaft: its class, such as H7, or what it measures");
    for (const name of ["temperature", "start"])
      if (inputs.measure(name)?.low < -273.15) inputs.refuse(name, "write a temperature above -273.15 °C; nothing is colder");
    const start = inputs.measure("start");
    const hole = side(inputs, tools, tables.limits, "hole", start, lines);
    const shaft = side(inputs, tools, tables.limits, "shaft", start, lines);
    if (inputs.problems.length) return null;
    if (!hole || !shaft) {
      const [known, other] = hole ? ["hole", "shaft"] : ["shaft", "hole"];
      const warm = inputs.has("temperature") ? ` and at ${figure(inputs.measure("temperature"), 1, "°C")}` : "";
      return { lines, answer: `The ${known} measures ${figure(hole ?? shaft, 4, "mm")} at ${figure(start, 1, "°C")}. Write the ${other} too to see how they fit at that${warm}.`, cautions, sought: null };
    }
    const [cold, gap] = [figure(start, 1, "°C"), interval.subtract(hole, shaft)];
    lines.push(line("gap when cold", figure(gap, 4, "mm"), "hole less shaft; below zero it is interference"));
    lines.push(line("kind of fit", kind(gap), "ISO 286-1: clearance is never tight, interference never loose, transition either"));
    const loose = words(gap, 4, tools);
    let answer = `${loose[0].toUpperCase()}${loose.slice(1)} at ${cold}: ${kind(gap)}.`;
    const hot = inputs.measure("temperature");
    if (hot) answer += heat(inputs, tools, tables.materials, start, hot, hole, shaft, lines, cautions);
    return { lines, answer, cautions, sought: null };
  };
})();
