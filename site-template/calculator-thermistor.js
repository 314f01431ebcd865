// A thermistor from R25 and B, or from two readings of it, as ThermistorCalculator lays it out.
(() => {
  "use strict";

  window.crossrefCalculators.all["thermistor"] = (inputs, tools, tables) => {
    const { interval, figure, shown, line } = tools;
    const table = tables.thermistor;
    const [r25, beta, ohms, at, otherOhms, otherAt] = ["r25", "beta", "ohms", "at", "other-ohms", "other-at"].map((n) => inputs.measure(n));
    for (const name of ["at", "other-at"])
      if (inputs.has(name) && !interval.holds(table.range, inputs.measure(name))) inputs.refuse(name, `write a temperature from ${figure(table.range, 0, "°C")}`);
    if (beta && !interval.holds(table.credibleB, beta)) inputs.refuse("beta", `write a B value from ${figure(table.credibleB, 0, "K")}`);
    if (inputs.problems.length) return null;

    const inverse = (celsius) => interval.falling(interval.add(celsius, 273.15), (k) => 1 / k);
    const ohmsAt = (r, b, celsius) => interval.multiply(r, interval.rising(interval.multiply(b, interval.subtract(inverse(celsius), 1 / 298.15)), Math.exp));
    const lines = [];
    const said = [];

    function stated() {
      if (at) {
        const expected = ohmsAt(r25, beta, at);
        lines.push(line("resistance there", shown(expected, "ohm"), "R25 · exp(B · (1/T - 1/298.15 K)), T in kelvin"));
        said.push(`At ${figure(at, 1, "°C")} it should have ${shown(expected, "ohm")}.`);
        if (ohms) {
          const [result, how] = interval.halfWidth(expected) === 0 ? ["cannot be told", "write R25, B and the temperature with what they may be off, such as 100 +/- 3 kohm"]
            : !interval.meets(expected, ohms) ? ["not plausible", "nothing the reading may be is among what it should have"]
            : interval.holds(expected, ohms) ? ["plausible", "all that the reading may be is among what it should have"]
            : ["cannot be told", "only some of what the reading may be is among what it should have"];
          lines.push(line("plausible", result, how));
          said.push(`The reading against that: ${result}.`);
        }
      }
      if (!ohms) return;
      const turned = interval.add(interval.divide(interval.rising(interval.divide(ohms, r25), Math.log), beta), 1 / 298.15);
      if (!interval.holds(inverse(table.range), turned)) {
        lines.push(line("temperature of the reading", "unknown", `outside ${figure(table.range, 0, "°C")}: open, shorted, or another thermistor`));
        said.push("The reading means no temperature of a fixing unit: open, shorted, or another thermistor.");
        return;
      }
      const meant = interval.subtract(interval.falling(turned, (i) => 1 / i), 273.15);
      lines.push(line("temperature of the reading", figure(meant, 1, "°C"), "1 / (ln(R/R25)/B + 1/298.15 K), less 273.15"));
      if (at) lines.push(line("off by", figure(interval.subtract(meant, at), 1, "°C"), "temperature of the reading - temperature"));
      said.push(`The reading means ${figure(meant, 1, "°C")}.`);
    }

    const against = (what, written, found, unit) =>
      line(what, interval.meets(found, written) ? "no difference shown" : "differs", `${shown(written, unit)} stated, ${shown(found, unit)} from the readings`);

    function measured() {
      if (interval.meets(at, otherAt)) {
        inputs.refuse("other-at", "write a temperature that is surely another one than that of the first reading");
        return;
      }
      const b = interval.divide(interval.rising(interval.divide(ohms, otherOhms), Math.log), interval.subtract(inverse(at), inverse(otherAt)));
      lines.push(line("B from the readings", figure(b, 0, "K"), "ln(R1/R2) / (1/T1 - 1/T2), T in kelvin"));
      if (!interval.holds(table.credibleB, b)) {
        said.push(`The readings give no B that lies surely from ${figure(table.credibleB, 0, "K")}: they are doubtful, too close together, or of no thermistor of this sort.`);
        return;
      }
      const found = interval.divide(ohms, ohmsAt(interval.exactly(1), b, at));
      lines.push(line("R25 from the readings", shown(found, "ohm"), "first reading / exp(B · (1/T1 - 1/298.15 K))"));
      if (beta) lines.push(against("stated B", beta, b, "K"));
      if (r25) lines.push(against("stated R25", r25, found, "ohm"));
      said.push(`The two readings give a B of ${figure(b, 0, "K")} and ${shown(found, "ohm")} at 25 °C.`);
    }

    if (r25 && beta) stated();
    if (ohms && at && otherOhms && otherAt) measured();
    if (inputs.problems.length) return null;
    if (!lines.length) {
      inputs.refuse("r25", "write R25 and B with a temperature or a reading; or two readings, each with its temperature");
      return null;
    }
    const sizes = {};
    for (const name of ["r25", "beta"]) if (inputs.has(name)) sizes[name] = inputs.quantity(name);
    return { lines, answer: said.join(" "), cautions: table.cautions, sought: { kind: "thermistor", sizes } };
  };
})();
