// A heater lamp from its rating, as LampCalculator, LampSupply and LampComparison lay it out. Never finds a fit.
(() => {
  "use strict";

  const OUTSIDE = "outside the formula's range";
  const ATTRIBUTES = [["volts", "volts"], ["watts", "watts"], ["lit", "lit-length"], ["length", "overall-length"], ["ends", "ends"]];
  const UNITS = { volts: "V", watts: "W", lit: "mm", length: "mm" };

  window.crossrefCalculators.all["lamp"] = (inputs, tools, tables) => {
    const { interval, figure, shown, line } = tools;
    const table = tables.lamp;
    const keep = (name, most, unit) => {
      const value = inputs.measure(name);
      if (value && (value.low < 1 || value.high > most)) inputs.refuse(name, `write a figure from 1 to ${figure(most, 0, unit)}`);
    };

    const [volts, watts] = [inputs.measure("volts"), inputs.measure("watts")];
    keep("volts", 1000, "V");
    keep("watts", 10000, "W");
    keep("mains", 1000, "V");
    const [cold, leads] = [inputs.measure("cold"), inputs.measure("leads")];
    if (leads && (leads.low < 0 || (cold && cold.low - leads.high <= 0)))
      inputs.refuse("leads", "write the ohms of the leads alone, from zero to less than the cold reading");
    if (inputs.problems.length) return null;

    const hotOhms = interval.divide(interval.multiply(volts, volts), watts);
    const amps = interval.divide(watts, volts);
    const coldOhms = interval.divide(hotOhms, table.coldToHot);
    const lines = [
      line("hot resistance", shown(hotOhms, "ohm"), "V²/P at rated volts"),
      line("current", shown(amps, "A"), "P/V at rated volts"),
      line("cold resistance", shown(coldOhms, "ohm"), `hot divided by ${figure(table.coldToHot, 0, "")}; from memory of tungsten's resistivity, no standard`),
    ];

    let refused = false;

    function supplied(supply) {
      const named = table.supplies.find((s) => s.volts === supply.low && s.volts === supply.high);
      const meant = named ? [named] : table.supplies.filter((s) => interval.holds(s.band, supply));
      const only = meant.length === 1 ? meant[0] : null;
      if (only) lines.push(line("supply", shown(only.band, "V"), `a supply of ${shown(only.volts, "V")}: ${only.source}`));
      else lines.push(line("supply", "unknown", meant.length === 0
        ? "no nominal voltage of the table is near"
        : `may be one of ${meant.map((m) => shown(m.volts, "V")).join(", ")}; write the nominal voltage`));

      const nominal = meant.length ? meant.map((m) => interval.exactly(m.volts)) : [supply];
      const exact = volts.low === volts.high && nominal.length === 1 && nominal[0].low === volts.low && nominal[0].high === volts.high;
      const rated = nominal.some((n) => interval.meets(n, volts)) ? (exact ? "yes" : "unknown") : "no";
      lines.push(line("rated for that supply", rated, `${shown(volts, "V")} on the lamp, ${shown(supply, "V")} written for the supply`));

      const ratio = interval.divide(supply, volts);
      const holds = ratio.low >= 1 - table.reach - 1e-9 && ratio.high <= 1 + table.reach + 1e-9;
      lines.push(line("volts over rated volts", shown(ratio, ""), holds ? "inside the formula's range, a tenth to either side" : `${OUTSIDE}, which is a tenth to either side`));
      const times = (r, exponent) => {
        const ends = [Math.pow(r.low, exponent.low), Math.pow(r.low, exponent.high), Math.pow(r.high, exponent.low), Math.pow(r.high, exponent.high)];
        return { low: Math.min(...ends), high: Math.max(...ends) };
      };
      const law = (exponent) => `ratio to the power ${figure(exponent, 2, "")}${holds ? ", handbook practice" : `; ${OUTSIDE}`}`;
      const power = interval.multiply(watts, times(ratio, table.power));
      lines.push(line("power there", shown(power, "W"), law(table.power)));
      lines.push(line("power if ohmic", shown(interval.multiply(watts, interval.multiply(ratio, ratio)), "W"), "ratio squared: too low below rated volts, too high above"));
      lines.push(line("current there", shown(interval.multiply(amps, times(ratio, table.current)), "A"), law(table.current)));
      lines.push(line("light there", holds ? shown(times(ratio, table.flux), "times") : "unknown", holds ? law(table.flux) : OUTSIDE));
      lines.push(line("life there", holds ? shown(times(ratio, table.life), "times") : "unknown", holds
        ? `${law(table.life)}; one seller's figures give ${figure(table.mildLife, 0, "")}, ${shown(times(ratio, table.mildLife), "times")}`
        : OUTSIDE));
      if (rated === "yes" && only)
        lines.push(line("power over the supply's band", shown(interval.multiply(watts, times(interval.divide(only.band, volts), table.power)), "W"), law(table.power)));

      const words = `${shown(volts, "V")} lamp on ${shown(supply, "V")}`;
      if (rated === "yes") return `A ${words}: the nominal voltage is the same.`;
      if (rated === "unknown") return `A ${words}: whether it is rated for that supply is unknown.`;
      refused = true;
      return `Not a fit: a ${words} is on a supply that it is not rated for; it would take about ${shown(power, "W")} instead of its ${shown(watts, "W")}${holds ? "" : `, ${OUTSIDE}`}.`;
    }

    const written = (input, name) => (input in UNITS ? shown(inputs.measure(name), UNITS[input]) : inputs.text(name));

    const size = (input) => inputs.quantity(input) ?? inputs.text(input);

    function compared() {
      if (!ATTRIBUTES.some(([input]) => inputs.has("other-" + input))) return [];
      const [differ, unknown] = [[], []];
      for (const [input, attribute] of ATTRIBUTES) {
        const other = "other-" + input;
        const name = attribute.replaceAll("-", " ");
        if (!inputs.has(input) || !inputs.has(other)) {
          unknown.push(name);
          lines.push(line(`${name} of both`, "unknown", "not written for both lamps"));
          continue;
        }
        const { agreement, how } = tools.compare(tables.tolerances.lamp[attribute], size(input), size(other));
        if (agreement === "differs") differ.push(name);
        lines.push(line(`${name} of both`, agreement === "agrees" ? "agree" : "differ", `${written(input, input)} and ${written(input, other)}; ${how}`));
      }
      const rest = unknown.length ? ` Unknown: ${unknown.join(", ")}.` : "";
      return [(differ.length ? `Not a fit: the other lamp differs in ${differ.join(", ")}.` : "No difference shows in what was written of both lamps, which decides nothing.") + rest];
    }

    function read() {
      const filament = interval.subtract(cold, leads ?? table.unmeasuredLeads);
      if (!leads) filament.low = Math.max(filament.low, 0);
      lines.push(line("reading without leads", shown(filament, "ohm"), leads
        ? "cold reading - leads"
        : `cold reading - leads, which were not measured and may have ${figure(table.unmeasuredLeads, 0, "ohm")}`));
      const around = { low: coldOhms.low - 1e-9, high: coldOhms.high + 1e-9 };
      const [result, how] = filament.low > hotOhms.high + 1e-9 ? ["open", "more ohms cold than hot: an open filament or a bad contact"]
        : !interval.meets(filament, around) ? ["intact, not plausible", "outside the cold resistance of this rating"]
        : interval.holds(around, filament) ? ["intact, plausible", "inside the cold resistance of this rating"]
        : ["cannot be told", "the reading reaches inside and outside the cold resistance of this rating"];
      lines.push(line("filament", result, how));
      return `Filament: ${result}; a reading proves neither volts nor watts.`;
    }

    const said = [];
    if (inputs.has("mains")) said.push(supplied(inputs.measure("mains")));
    said.push(...compared());
    if (cold) said.push(read());
    if (!said.length) said.push(`A lamp of this rating has ${shown(hotOhms, "ohm")} hot and about ${shown(coldOhms, "ohm")} cold.`);
    said.push("Only the maker's document for that machine makes a lamp a fit.");

    const sizes = {};
    for (const [input, attribute] of ATTRIBUTES) if (inputs.has(input)) sizes[attribute] = size(input);
    return { lines, answer: said.join(" "), cautions: table.cautions, sought: refused ? null : { kind: "lamp", sizes } };
  };
})();
