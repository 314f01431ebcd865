// Marks that repeat, and the places on record that turn so, as RepeatCalculator lays it out.
(() => {
  "use strict";

  const NEAR_MISSES = 3;
  const LEAST = 1;

  // Optimal string alignment distance, as Suggest.Distance.
  function distance(left, right) {
    let [before, last] = [[], Array.from({ length: right.length + 1 }, (_, j) => j)];
    for (let i = 1; i <= left.length; i++) {
      const row = [i];
      for (let j = 1; j <= right.length; j++) {
        row[j] = Math.min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (left[i - 1] === right[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && left[i - 1] === right[j - 2] && left[i - 2] === right[j - 1]) row[j] = Math.min(row[j], before[j - 2] + 1);
      }
      [before, last] = [last, row];
    }
    return last[right.length];
  }

  const byText = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

  // What somebody probably meant, as Suggest.Hint.
  function hint(word, known, otherwise) {
    if (word.length > 160) return otherwise;
    const limit = word.length <= 3 ? 1 : Math.max(2, Math.floor(word.length / 3));
    const near = [...new Set(known)]
      .filter((k) => Math.abs(k.length - word.length) <= limit)
      .map((k) => ({ word: k, off: distance(word.toLowerCase(), k.toLowerCase()) }))
      .filter((k) => k.off <= limit && k.off < k.word.length)
      .sort((a, b) => a.off - b.off || byText(a.word, b.word))
      .slice(0, 3);
    return near.length ? `did you mean ${near.map((k) => `'${k.word}'`).join(" or ")}?` : otherwise;
  }

  window.crossrefCalculators.all["repeat"] = (inputs, tools, tables, record) => {
    const { interval, number, figure, line } = tools;
    const tolerance = inputs.measure("tolerance");
    if (tolerance.low < 0 || tolerance.high > 50) inputs.refuse("tolerance", "write a tolerance from 0 to 50 percent");
    const ratio = inputs.measure("ratio");
    if (ratio.low < 0.1 || ratio.high > 10) inputs.refuse("ratio", "write a ratio from 0.1 to 10");
    const gaps = inputs.count("sheets") - 1;
    const gap = inputs.measure("gap");
    if (gap && gap.low < 0) inputs.refuse("gap", "write 0 or more");
    else if (gaps > 0 && !gap) inputs.refuse("gap", "write the gap between two sheets as they run; without it the way over several sheets is unknown");
    else if (gaps === 0 && gap) inputs.refuse("sheets", "write over how many sheets the distance runs, 2 or more; or leave the gap out, which counts only between sheets");
    const machine = inputs.text("machine");
    const known = record.machines.find((m) => m.id === machine) ?? null;
    if (machine !== null && !known)
      inputs.refuse("machine", record.machines.length === 0 ? "no machine is on record here; leave it out"
        : `there is no machine or family '${machine}' on record; ${hint(machine, record.machines.map((m) => m.id), "leave it out to search every family")}`);
    const repeat = interval.divide(interval.add(inputs.measure("distance"), interval.multiply(gap ?? 0, gaps)), inputs.count("repeats"));
    if (repeat.low < LEAST) inputs.refuse("distance", `write a distance that makes at least ${figure(LEAST, 1, "mm")} a repeat`);
    if (inputs.problems.length) return null;

    const around = interval.multiply(repeat, ratio);
    const band = { low: around.low * (1 - tolerance.high / 100), high: around.high * (1 + tolerance.high / 100) };
    const diameter = (x) => interval.divide(x, Math.PI);
    const lines = [
      line("one repeat", figure(repeat, 2, "mm"), gaps > 0 ? "(distance + gaps between the sheets) / repeats" : "distance / repeats"),
      line("once around", figure(around, 2, "mm"), "repeat · skin speed / paper speed; for a belt, its loop"),
      line("diameter", figure(diameter(around), 2, "mm"), "once around / π"),
      line("diameter with tolerance", figure(diameter(band), 2, "mm"), `${number(tolerance.high, 2)} % to either side; rubber squashes and slips (trade practice, no source)`),
    ];

    const matches = record.turning
      .filter((place) => !known || place.family === known.family)
      .map((place) => ({
        place,
        misfit: ((interval.middle(place.around) - interval.middle(around)) / interval.middle(around)) * 100,
        suspect: place.around.low <= band.high + 1e-9 && band.low <= place.around.high + 1e-9,
      }))
      .sort((a, b) => b.suspect - a.suspect || Math.abs(a.misfit) - Math.abs(b.misfit) || byText(a.place.position, b.place.position));
    const off = (m) => figure(Math.abs(m.misfit), 1, "%") + (m.misfit < 0 ? " less" : " more");
    const suspects = matches.filter((m) => m.suspect);
    for (const m of [...suspects, ...matches.filter((x) => !x.suspect).slice(0, NEAR_MISSES)])
      lines.push(line(m.place.name, `${figure(m.place.around, 1, "mm")}, ${off(m)}`, `${m.suspect ? "suspect" : "near miss"}: ${m.place.position}; ${m.place.because}`));

    const where = known ? `on record for ${known.name}` : "on record";
    const found = !matches.length ? `No place that turns is ${where}, so none was compared.`
      : suspects.length ? `Suspects ${where}: ${suspects.map((s) => s.place.name).join("; ")}.`
      : `Nothing ${where} turns so; the nearest is ${matches[0].place.name}, ${off(matches[0])}.`;
    const answer = `Marks every ${figure(repeat, 1, "mm")}: something about ${figure(diameter(around), 1, "mm")} across. ${found}`;
    return { lines, answer, cautions: tables.repeat.cautions, sought: null };
  };
})();
