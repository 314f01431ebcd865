// A gear from what can be counted and measured on it. The command does the same in C# (Crossref.Core/Arithmetic/Gears and
// Workings/Gear*.cs), where the sources of the formulas and tolerances stand.
(() => {
  "use strict";

  const USUAL_ANGLES = [20, 14.5];
  const [MARGIN, NEAR, TWIN, ROUNDING] = [0.003, 0.01, 0.02, 1e-9];
  const COMPARED = ["module", "helix", "hand", "pressure-angle", "face", "bore"];

  const radians = (degrees) => (degrees * Math.PI) / 180;
  const involuteAt = (degrees) => Math.tan(radians(degrees)) - radians(degrees);

  function geometry({ add, subtract, multiply, divide, rising, falling, exactly, middle }) {
    const sin = (angle) => rising(angle, (a) => Math.sin(radians(a)));
    const cos = (angle) => falling(angle, (a) => Math.cos(radians(a)));
    const tan = (angle) => rising(angle, (a) => Math.tan(radians(a)));
    const arcSin = (ratio) => rising(ratio, (r) => (Math.asin(r) * 180) / Math.PI);
    const arcCos = (ratio) => falling(ratio, (r) => (Math.acos(r) * 180) / Math.PI);
    const arcTan = (ratio) => rising(ratio, (r) => (Math.atan(r) * 180) / Math.PI);
    const involute = (angle) => rising(angle, involuteAt);
    const transverseModule = (module, helix) => divide(module, cos(helix));
    const transverseAngle = (angle, helix) => arcTan(divide(tan(angle), cos(helix)));
    const baseHelix = (angle, helix) => arcSin(multiply(sin(helix), cos(angle)));
    const reference = (teeth, module, helix) => multiply(transverseModule(module, helix), teeth);
    const unshifted = (teeth, spanned, angle, helix) =>
      multiply(cos(angle), add(Math.PI * (spanned - 0.5), multiply(teeth, involute(transverseAngle(angle, helix)))));

    function teethToSpan(teeth, angle, helix) {
      const [cosine, tangent] = [Math.cos(radians(helix)), Math.tan(radians(angle))];
      const both = cosine * cosine + tangent * tangent;
      const rolled = (1 + (1 - cosine * cosine) / both) * Math.sqrt(Math.max(0, both * Math.pow(1 / cosine, 2) - 1));
      return (teeth * (rolled - involuteAt(middle(transverseAngle(exactly(angle), exactly(helix)))))) / Math.PI + 0.5;
    }

    return {
      cos,
      transverseModule,
      transverseAngle,
      reference,
      base: (teeth, module, angle, helix) => multiply(reference(teeth, module, helix), cos(transverseAngle(angle, helix))),
      tip: (teeth, module, helix) => multiply(module, add(divide(teeth, cos(helix)), 2)),
      root: (teeth, module, helix) => multiply(module, subtract(divide(teeth, cos(helix)), 2.5)),
      moduleByTip: (teeth, tip, helix) => divide(tip, add(divide(teeth, cos(helix)), 2)),
      moduleByDepth: (tip, root) => divide(subtract(tip, root), 4.5),
      moduleByDistance: (distance, bothTeeth, helix) => divide(multiply(multiply(2, distance), cos(helix)), bothTeeth),
      moduleByPitch: (pitch, angle) => divide(pitch, multiply(Math.PI, cos(angle))),
      span: (teeth, spanned, module, angle, helix) => multiply(module, unshifted(teeth, spanned, angle, helix)),
      shift: (span, teeth, spanned, module, angle, helix) =>
        divide(subtract(divide(span, module), unshifted(teeth, spanned, angle, helix)), multiply(2, sin(angle))),
      narrowestFace: (span, angle, helix) => multiply(span, sin(baseHelix(angle, helix))),
      teethToSpan: (teeth, angle, helix) => Math.max(1, Math.floor(teethToSpan(teeth, middle(angle), middle(helix)) + ROUNDING)),
      referenceDistance: (bothTeeth, module, helix) => divide(multiply(transverseModule(module, helix), bothTeeth), 2),
      workingAngle(referenceDistance, transverse, distance) {
        const cosine = divide(multiply(referenceDistance, cos(transverse)), distance);
        return cosine.high > 1 ? null : arcCos(cosine);
      },
      bothShifts: (angle, transverse, working, bothTeeth) =>
        divide(multiply(subtract(involute(working), involute(transverse)), bothTeeth), multiply(2, tan(angle))),
    };
  }

  // Straight teeth have the angle 0 and no hand: either says both.
  function lean(inputs, prefix, { middle, exactly }) {
    const hand = inputs.text(`${prefix}hand`);
    const written = inputs.measure(`${prefix}helix`);
    if (!written) {
      if (prefix === "" && (hand === "left" || hand === "right")) inputs.refuse("helix", "teeth that lean have a helix angle: write it, if only roughly, such as 15 +/- 5");
      return [hand === "none" ? exactly(0) : null, hand];
    }
    if (middle(written) < 0) inputs.refuse(`${prefix}helix`, "write the angle without a sign; the hand says which way the teeth lean");
    if (written.high > 60) inputs.refuse(`${prefix}helix`, "write an angle up to 60°");
    const helix = { low: Math.max(written.low, 0), high: written.high };
    if (hand === "none" && helix.low > 0) inputs.refuse(`${prefix}hand`, "teeth at an angle have a hand: write left or right");
    if ((hand === "left" || hand === "right") && helix.high === 0) inputs.refuse(`${prefix}hand`, "straight teeth have no hand: write none");
    if (hand === "none") return [exactly(0), hand];
    return [helix, helix.high === 0 ? "none" : hand];
  }

  function readGear(inputs, prefix, interval) {
    const teeth = inputs.count(`${prefix}teeth`);
    if (teeth !== null && teeth < 3) inputs.refuse(`${prefix}teeth`, "write at least 3 teeth");
    const [helix, hand] = lean(inputs, prefix, interval);
    const angle = inputs.measure(`${prefix}pressure-angle`);
    if (angle && (angle.low < 5 || angle.high > 45)) inputs.refuse(`${prefix}pressure-angle`, "write an angle between 5° and 45°");
    let module = inputs.measure(`${prefix}module`);
    const pitch = prefix === "" ? inputs.measure("dp") : null;
    if (pitch) {
      if (module) inputs.refuse("dp", "write the module or the diametral pitch, not both");
      module = interval.divide(25.4, pitch);
    }
    return { teeth, module, angle, helix, hand, face: inputs.measure(`${prefix}face`), bore: inputs.measure(`${prefix}bore`) };
  }

  function readMeasured(inputs, gear, other, { subtract }) {
    const seen = { spanTeeth: inputs.count("span-teeth"), mateTeeth: other.teeth };
    for (const [name, input] of [["tip", "tip"], ["root", "root"], ["span", "span"], ["nextSpan", "next-span"], ["distance", "distance"]])
      seen[name] = inputs.measure(input);
    seen.pitch = seen.nextSpan && seen.span ? subtract(seen.nextSpan, seen.span) : null;
    if (seen.tip && seen.root && seen.root.high >= seen.tip.low) inputs.refuse("root", "the root diameter is smaller than the tip diameter; write it so");
    if (!seen.span && (seen.nextSpan || seen.spanTeeth !== null)) inputs.refuse("span", "write the span that these belong to");
    if (seen.pitch && seen.pitch.low <= 0) inputs.refuse("next-span", "write a span that is longer, also after the uncertainties are taken off");
    if (seen.spanTeeth !== null && seen.spanTeeth >= gear.teeth) inputs.refuse("span-teeth", "write fewer teeth than the gear has");
    if (seen.distance && other.teeth === null) inputs.refuse("with-teeth", "count the second gear's teeth; the centre distance says nothing without them");
    return seen;
  }

  // The sizes in use, held against a module that was measured.
  function toothSizes(sizes, { middle }) {
    function match(size, module) {
      const off = middle(module) / size.module - 1;
      const held = size.module >= module.low - ROUNDING && size.module <= module.high + ROUNDING;
      return { size, off, holds: held || Math.abs(off) <= MARGIN + ROUNDING };
    }
    const byNearness = (a, b) => Math.abs(a.off) - Math.abs(b.off);
    return {
      matching: (module) => sizes.map((s) => match(s, module)).filter((m) => m.holds || Math.abs(m.off) <= NEAR + ROUNDING).sort(byNearness),
      nearest: (module) => sizes.map((s) => match(s, module)).sort(byNearness)[0],
      twinsOf: (size) => sizes.filter((s) => s !== size && Math.abs(s.module / size.module - 1) <= TWIN + ROUNDING),
    };
  }

  // What is written counts first, then two spans, then the tip diameter.
  function find(gear, seen, { interval, figure, line }, g, sizes) {
    const { middle, holds, exactly } = interval;
    const [lines, cautions] = [[], []];
    const helix = gear.helix ?? exactly(0);
    const module = (what, size, how) => lines.push(line(what, figure(size, 4, "mm"), how));
    const named = (size) => (size.name.endsWith("DP") ? `${size.name} (${figure(size.module, 5, "mm")})` : size.name);
    const off = (match) => `${figure(Math.abs(match.off) * 100, 2, "%")} off`;
    const candidate = (what, match) => lines.push(line(what, match.size.name, `${figure(match.size.module, 5, "mm")}, ${match.size.from}; ${off(match)}`));
    const or = (names) => (names.length === 1 ? names[0] : `${names.slice(0, -1).join("; ")}; or ${names.at(-1)}`);

    if (!gear.helix) {
      lines.push(line("helix angle", "unknown", "taken as 0° in the lines below: straight teeth"));
      cautions.push("The helix angle is not known: the figures hold for straight teeth only.");
    }
    const byTip = seen.tip ? g.moduleByTip(gear.teeth, seen.tip, helix) : null;
    if (byTip) module("module by the tip", byTip, "m = d_a / (z / cos β + 2), ISO 21771, if the teeth are not profile-shifted");
    if (seen.tip && seen.root)
      module("module by tip and root", g.moduleByDepth(seen.tip, seen.root), "m = (d_a - d_f) / 4.5, ISO 53 profile A; profile shift does not mislead it, stub teeth do");
    if (seen.distance)
      module("module by the distance", g.moduleByDistance(seen.distance, gear.teeth + seen.mateTeeth, helix), "m = 2 a cos β / (z1 + z2), ISO 21771, if the teeth are not profile-shifted");
    const guessed = !gear.angle;
    const bySpans = seen.pitch ? lookBySpans() : null;
    const spanned = g.teethToSpan(gear.teeth, gear.angle ?? exactly(USUAL_ANGLES[0]), helix);
    const measure = `measure the span over ${spanned} and ${spanned + 1} teeth`;
    const [found, how, answer] = gear.module ? tellWritten()
      : bySpans ? tellSpans()
      : byTip ? tellTip()
      : [null, "nothing measured tells it", `Not identified: ${seen.tip ? "" : "measure the tip diameter, or "}${measure}.`];
    lines.push(line("module", found ? figure(found, 5, "mm") : "unknown", how));
    if (byTip && found && !holds(byTip, middle(found)) && Math.abs(middle(byTip) / middle(found) - 1) > NEAR + ROUNDING)
      cautions.push(`The tip diameter points to ${figure(byTip, 4, "mm")}: profile-shifted teeth, stub teeth, worn tips or another module.`);
    else if (byTip && !gear.module && !bySpans)
      cautions.push(`Profile shift, stub teeth and worn tips mislead a tip diameter; two spans are not misled: ${measure}.`);
    const isWritten = ({ match }) => holds(gear.module, match.size.module) || Math.abs(middle(gear.module) / match.size.module - 1) <= MARGIN + ROUNDING;
    if (bySpans?.length > 0 && gear.module && !bySpans.some(isWritten)) cautions.push("The two spans point to another module than the one written.");
    const sure = !gear.helix && !gear.module && !bySpans ? null : found;
    const possible = found ? [] : bySpans ? bySpans.map((f) => f.match) : byTip ? sizes.matching(byTip) : [];
    const modules = possible.map((m) => m.size.module);
    // One size alone that was not told is a doubtful one.
    const within = modules.length > 1 ? { low: Math.min(...modules), high: Math.max(...modules) } : null;
    return { module: found, sure, within, angle: bySpans?.length === 1 ? bySpans[0].angle : USUAL_ANGLES[0], lines, answer, cautions };

    function lookBySpans() {
      lines.push(line("base pitch", figure(seen.pitch, 4, "mm"), "p_bn = W_(k+1) - W_k, ISO 21771, whatever the profile shift"));
      if (seen.pitch.low === seen.pitch.high) cautions.push("The spans were written without their uncertainty and taken as exact; 0.02 mm are enough to take module 0.8 for 32 DP.");
      const matches = [];
      for (const angle of gear.angle ? [gear.angle] : USUAL_ANGLES.map(exactly)) {
        const size = g.moduleByPitch(seen.pitch, angle);
        module(`module by the spans, at ${figure(angle, 2, "°")}`, size, "m = p_bn / (π cos α)");
        for (const match of sizes.matching(size).filter((m) => m.holds)) {
          matches.push({ match, angle: middle(angle) });
          candidate("candidate by the spans", match);
        }
      }
      return matches;
    }

    function tellWritten() {
      const nearest = sizes.nearest(gear.module);
      const tip = seen.tip ? "" : ` Without profile shift the tip diameter is ${figure(g.tip(gear.teeth, gear.module, helix), 3, "mm")}.`;
      return [
        gear.module,
        nearest.holds ? `as written; ${named(nearest.size)}, ${nearest.size.from}` : `as written; no size in use, nearest is ${named(nearest.size)}`,
        `The module is ${figure(gear.module, 5, "mm")}, as written.${tip}`,
      ];
    }

    function tellSpans() {
      const at = (angle) => (guessed ? ` at ${figure(angle, 2, "°")}` : "");
      if (bySpans.length === 1) {
        const { match, angle } = bySpans[0];
        return [exactly(match.size.module), `the only size in use with this base pitch${at(angle)}`, `By its two spans this is ${named(match.size)}${at(angle)}.`];
      }
      if (bySpans.length === 0)
        return [null, "no size in use has this base pitch", `Not identified: no size in use has a base pitch of ${figure(seen.pitch, 4, "mm")}${guessed ? " at 20° or 14.5°" : ""}; measure the spans again.`];
      return [null, "several sizes in use have this base pitch", `By its two spans this may be ${or(bySpans.map((f) => named(f.match.size) + at(f.angle)))}: measure the spans more closely.`];
    }

    function tellTip() {
      const matches = sizes.matching(byTip);
      for (const match of matches) candidate("candidate by the tip", match);
      if (matches.length === 0) {
        const nearest = sizes.nearest(byTip);
        return [null, "no size in use is within 1%", `Not identified: no size in use is within 1% of ${figure(byTip, 4, "mm")}; nearest is ${named(nearest.size)}, ${off(nearest)}. Profile-shifted teeth read like this: ${measure}.`];
      }
      if (matches.length > 1)
        return [null, "several sizes in use are within 1%", `By its tip diameter this may be ${or(matches.map((m) => `${named(m.size)}, ${off(m)}`))}. The tip diameter alone cannot decide: ${measure}.`];
      const only = matches[0];
      if (!only.holds) return [null, "nothing fits within 0.3%", `Not surely identified: nearest is ${named(only.size)}, ${off(only)}. Profile-shifted teeth and worn tips read like this: ${measure}.`];
      const twins = sizes.twinsOf(only.size);
      const twin = twins.length === 0 ? "" : ` Near it lies ${or(twins.map(named))}: to be sure, ${measure}.`;
      return [exactly(only.size.module), "the only size in use within 1% of the tip's", `By its tip diameter this is ${named(only.size)}, ${off(only)}.${twin}`];
    }
  }

  // The sizes that follow. What needs a pressure angle that is not known is given for a usual one and says so.
  function follow(gear, usualAngle, seen, { interval, figure, line }, g) {
    const lines = [];
    const { module, teeth } = gear;
    if (!module) return lines;
    const size = (what, value, how, decimals = 3, unit = "mm") => lines.push(line(what, figure(value, decimals, unit), how));
    const helix = gear.helix ?? interval.exactly(0);
    const angle = gear.angle ?? interval.exactly(usualAngle);
    const transverse = g.transverseAngle(angle, helix);
    const at = gear.angle ? "" : ` at ${figure(usualAngle, 2, "°")}`;
    if (at) lines.push(line("pressure angle", "unknown", `lines${at} hold for that angle; 20° is usual (ISO 53), old inch gears have 14.5°`));
    if (helix.high > 0) size("transverse module", g.transverseModule(module, helix), "m_t = m / cos β, ISO 21771", 4);
    size("reference diameter", g.reference(teeth, module, helix), "d = z m / cos β, ISO 21771");
    if (!seen.tip) size("tip diameter", g.tip(teeth, module, helix), "d_a = d + 2 m, ISO 53 profile A, no profile shift");
    if (!seen.root) size("root diameter", g.root(teeth, module, helix), "d_f = d - 2.5 m, ISO 53 profile A, no profile shift");
    size(`base diameter${at}`, g.base(teeth, module, angle, helix), "d_b = d cos α_t, ISO 21771");
    const spanned = g.teethToSpan(teeth, angle, helix);
    for (const k of [spanned, spanned + 1])
      size(`span over ${k} ${k === 1 ? "tooth" : "teeth"}${at}`, g.span(teeth, k, module, angle, helix), "W_k = m cos α (π (k - 0.5) + z inv α_t), ISO 21771, no profile shift", 4);
    if (helix.high > 0)
      size(`face needed for both spans${at}`, g.narrowestFace(g.span(teeth, spanned + 1, module, angle, helix), angle, helix), "W_k sin β_b, ISO 21771; on a narrower face a jaw slips off");
    if (seen.span && seen.spanTeeth !== null)
      size(`profile shift${at}`, g.shift(seen.span, teeth, seen.spanTeeth, module, angle, helix), "x from W_k, in modules; teeth thinned for backlash read as less", 3, "");
    if (seen.mateTeeth === null) return lines;
    const reference = g.referenceDistance(teeth + seen.mateTeeth, module, helix);
    size("reference centre distance", reference, "a_d = m_t (z1 + z2) / 2, ISO 21771");
    if (!seen.distance) return lines;
    const working = g.workingAngle(reference, transverse, seen.distance);
    if (!working) {
      lines.push(line(`working pressure angle${at}`, "unknown", "the centre distance may be too small for the two base circles"));
      return lines;
    }
    size(`working pressure angle${at}`, working, "cos α_wt = a_d cos α_t / a, ISO 21771", 4, "°");
    size(`profile shifts together${at}`, g.bothShifts(angle, transverse, working, teeth + seen.mateTeeth), "x1 + x2 = (z1 + z2) (inv α_wt - inv α_t) / (2 tan α), ISO 21771; backlash reads as more", 3, "");
    return lines;
  }

  // Whether two gears mesh and whether one replaces the other, size by size.
  function judge(one, other, { interval, figure, line, tolerance }, tolerances) {
    const known = (size, decimals, unit) => (size === null ? "unknown" : figure(size, decimals, unit));
    function within(a, b, tolerance) {
      if (Math.max(a.low - b.high, b.low - a.high) > tolerance + ROUNDING) return "differs";
      return Math.max(a.high - b.low, b.high - a.low) <= tolerance + ROUNDING ? "agrees" : "unknown";
    }
    const compared = (name, agreement, values, rule) =>
      ({ name, agreement: agreement ?? "unknown", how: `${values}; ${agreement === null ? "both must be known" : rule}` });
    function size(name, attribute, of, decimals, unit) {
      const [a, b] = [of(one), of(other)];
      const values = `${known(a, decimals, unit)} and ${known(b, decimals, unit)}`;
      if (a === null || b === null) return compared(name, null, values);
      const value = Math.max(interval.middle(a), interval.middle(b));
      const { width, reason } = tolerance(tolerances[attribute], value);
      const rule = width === 0 ? reason : `may differ by ${figure(width, 4, unit)} (${reason})`;
      return compared(name, within(a, b, width), values, rule);
    }
    function hand(agree, rule) {
      const agreement = one.hand === null || other.hand === null ? null : agree ? "agrees" : "differs";
      return compared("hand", agreement, `${one.hand ?? "unknown"} and ${other.hand ?? "unknown"}`, rule);
    }
    const count = (gear) => (gear.teeth === null ? null : interval.exactly(gear.teeth));
    const teeth = [
      size("module", "module", (x) => x.module, 5, "mm"),
      size("pressure angle", "pressure-angle", (x) => x.angle, 2, "°"),
      size("helix angle", "helix", (x) => x.helix, 2, "°"),
    ];
    const opposite = one.hand !== "none" && other.hand !== "none" ? one.hand !== other.hand : one.hand === other.hand;
    const mesh = [...teeth, hand(opposite, "opposite hands mesh on parallel shafts, straight teeth with straight ones")];
    const apart = [
      hand(one.hand === other.hand, "must be the same"),
      size("teeth", "teeth", count, 0, ""),
      size("face", "face", (x) => x.face, 3, "mm"),
      size("bore", "bore", (x) => x.bore, 3, "mm"),
    ];
    const replace = [...teeth, ...apart];
    const overall = (sizes) =>
      sizes.some((s) => s.agreement === "differs") ? "differs" : sizes.every((s) => s.agreement === "agrees") ? "agrees" : "unknown";
    function tell(sizes) {
      const names = (agreement) => sizes.filter((s) => s.agreement === agreement).map((s) => s.name).join(", ");
      const outcome = overall(sizes);
      if (outcome === "agrees") return "yes by these sizes";
      return outcome === "differs" ? `no, they differ in ${names("differs")}` : `unknown; still to be measured: ${names("unknown")}`;
    }
    return {
      lines: [...mesh.map((s) => line(`mesh, ${s.name}`, s.agreement, s.how)), ...apart.map((s) => line(`replace, ${s.name}`, s.agreement, s.how))],
      answers: [`Mesh on parallel shafts: ${tell(mesh)}.`, `One in the other's place: ${tell(replace)}.`],
      cautions: overall(replace) === "agrees" ? ["Hub, keyway or flat and profile shift are not compared here: hold the gears against each other and compare a span."] : [],
    };
  }

  function soughtFor(inputs, gear, { workedOut }) {
    const sizes = {};
    if (gear.module) sizes.module = workedOut(gear.module);
    for (const name of ["teeth", "face", "helix", "pressure-angle", "bore"]) if (inputs.quantity(name)) sizes[name] = inputs.quantity(name);
    if (gear.helix && gear.helix.low === 0 && gear.helix.high === 0) sizes.helix = { value: 0, uncertainty: 0 };
    if (gear.hand !== null) sizes.hand = gear.hand;
    return { kind: "gear", sizes };
  }

  window.crossrefCalculators.all.gear = (inputs, tools, tables) => {
    const { interval } = tools;
    const written = readGear(inputs, "", interval);
    const other = readGear(inputs, "with-", interval);
    const seen = readMeasured(inputs, written, other, interval);
    if (inputs.problems.length) return null;
    const g = geometry(interval);
    const found = find(written, seen, tools, g, toothSizes(tables.gears, interval));
    const gear = { ...written, module: found.module };
    const compared = COMPARED.some((name) => inputs.has(`with-${name}`)) ? judge({ ...gear, module: found.sure }, other, tools, tables.tolerances.gear) : null;
    return {
      lines: [...found.lines, ...follow(gear, found.angle, seen, tools, g), ...(compared?.lines ?? [])],
      answer: [found.answer, ...(compared?.answers ?? [])].join(" "),
      cautions: [...found.cautions, ...(compared?.cautions ?? [])],
      sought: { ...soughtFor(inputs, { ...gear, module: found.module ?? found.within }, tools), doubtful: found.within ? "module" : null },
    };
  };
})();
