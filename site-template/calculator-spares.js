// How often a part fails and how many to keep, as SparesCalculator lays it out.
(() => {
  "use strict";

  // As Poisson.
  function atMost(count, mean) {
    let term = Math.exp(-mean);
    let sum = term;
    for (let i = 1; i <= count; i++) {
      term *= mean / i;
      sum += term;
    }
    return Math.min(sum, 1);
  }

  function fewest(mean, level) {
    let count = 0;
    while (atMost(count, mean) < level - 1e-12) count++;
    return count;
  }

  function meanAt(count, probability) {
    let [low, high] = [0, count + 10 * Math.sqrt(count + 1) + 40];
    for (let i = 0; i < 100; i++) {
      const middle = (low + high) / 2;
      if (atMost(count, middle) > probability) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }

  window.crossrefCalculators.all["spares"] = (inputs, tools, tables) => {
    const { interval, figure, shown, number, line } = tools;
    const { most: limit, covers, level: sureness, cautions } = tables.spares;
    const cover = (spares, expected) => figure(interval.falling(expected, (m) => atMost(spares, m) * 100), 1, "%");

    for (const name of ["failed", "have"]) if (inputs.count(name) > limit) inputs.refuse(name, `write ${limit} or fewer`);
    const percent = inputs.value("cover");
    if (!interval.holds(covers, percent)) inputs.refuse("cover", `write a cover from ${figure(covers, 1, "%")}`);
    const asksHowMany = ["per-day", "days", "have"].some((name) => inputs.has(name));
    if (asksHowMany && !inputs.has("per-day")) inputs.refuse("per-day", "write how much it runs in a day as well");
    if (asksHowMany && !inputs.has("days")) inputs.refuse("days", "write how many days an order takes as well");
    if (inputs.problems.length) return null;

    const [failed, ran] = [inputs.count("failed"), inputs.measure("ran")];
    const outside = (1 - sureness) / 2;
    const bounds = { low: failed === 0 ? 0 : meanAt(failed - 1, 1 - outside), high: meanAt(failed, outside) };
    const [rate, rates] = [failed, bounds].map((f) => shown(interval.multiply(interval.divide(f, ran), 1e6), "in a million"));
    const lines = [
      line("failure rate", rate, "failures / run"),
      line("bounds of the rate", rates, "95 % sure: half of chi-square at 2.5 % and 97.5 %, with 2k and 2k + 2 degrees of freedom, by the run (Garwood 1936)"),
    ];
    if (!asksHowMany)
      return { lines, answer: failed === 0 ? `None failed, which leaves room for ${rates}.` : `${rate} fail; the count leaves room for ${rates}.`, cautions };

    const [ahead, level] = [interval.multiply(inputs.measure("per-day"), inputs.measure("days")), percent / 100];
    const expected = interval.multiply(interval.divide(failed, ran), ahead);
    const most = interval.multiply(interval.divide(bounds, ran), ahead).high;
    if (most > limit) {
      inputs.refuse("ran", `write a longer run: by so short a one more than ${limit} may fail until an order arrives`);
      return null;
    }
    lines.push(line("expected to fail", shown(expected, ""), "rate × run in a day × days until an order arrives"));
    const said = [];
    const highest = fewest(most, level);
    if (failed === 0) {
      said.push(`None failed, so nobody can say how many to keep; at the highest rate that this leaves open it is ${highest}.`);
    } else {
      const keep = { low: fewest(expected.low, level), high: fewest(expected.high, level) };
      for (let count = Math.max(0, keep.high - 2); count <= keep.high; count++)
        lines.push(line(`cover with ${count}`, cover(count, expected), "e^-m · Σ m^i / i!, i = 0 to the number of spares (Poisson), m expected"));
      lines.push(line("spares to keep", figure(keep, 0, ""), `the fewest that cover ${number(percent, 1)} %`));
      said.push(`Keep ${figure(keep, 0, "")}: that is enough in ${cover(keep.high, expected)} of the waits for an order.`);
      if (highest > keep.high) said.push(`So small a count leaves room for a rate that asks for ${highest}.`);
    }
    lines.push(line("spares at the highest rate", number(highest, 0), `the same at ${shown(most, "")} expected, the upper bound`));
    if (inputs.has("have")) {
      const have = inputs.count("have");
      const covered = cover(have, { low: expected.low, high: most });
      lines.push(line(`cover with the ${have} in the house`, covered, "from the highest rate to the counted one"));
      said.push(`What is in the house is enough in ${covered} of them.`);
    }
    return { lines, answer: said.join(" "), cautions };
  };
})();
