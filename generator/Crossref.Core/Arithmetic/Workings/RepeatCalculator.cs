using Crossref.Core.Arithmetic.Rolling;
using Crossref.Core.Checking;
using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Marks that repeat: how thick the roller is, and which places on record turn so.</summary>
internal static class RepeatCalculator
{
    private const string Finer = "Over several repeats or sheets; how exact";
    private const int NearMisses = 3;

    // Nothing that turns is thinner.
    private const double Least = 1;

    internal static Calculator Create() => new(
        "repeat", "What repeats at that distance", "Which roller or belt leaves marks that repeat, from the distance between them.",
        [
            new("distance", "Distance between the marks", Dimension.Length) { Required = true, Argument = true, Example = "94", Help = "Along the feed, from a mark to the same mark again; over several repeats, from the first to the last." },
            new("machine", "Machine or family", null) { Example = "press-1", Help = "Its id, or the id of its family; without it every family on record is searched." },
            new("tolerance", "Tolerance in percent", Dimension.Number) { Group = Finer, Default = Figure.Number(Repeat.Tolerance, 0), MayBeZeroOrLess = true, Help = "To either side. Rubber squashes and slips." },
            new("repeats", "Repeats measured over", Dimension.Number) { Group = Finer, Default = "1", Whole = true },
            new("sheets", "Sheets laid end to end", Dimension.Number) { Group = Finer, Default = "1", Whole = true, Help = "More than 1 when the distance runs on over the next sheets." },
            new("gap", "Gap between sheets as they run", Dimension.Length) { Group = Finer, Example = "40 +/- 2", MayBeZeroOrLess = true, Help = "Rollers turn on in the gap." },
            new("ratio", "Skin speed over paper speed", Dimension.Number) { Group = Finer, Default = "1", Help = "Above 1 for a developer sleeve, which outruns the paper." },
        ],
        Work) { LooksAtRecords = true };

    private static Working? Work(CalculatorInputs inputs, OnRecord record)
    {
        var tolerance = inputs.Measure("tolerance")!.Value;
        if (tolerance.Low < 0 || tolerance.High > 50) inputs.Refuse("tolerance", "write a tolerance from 0 to 50 percent");
        if (inputs.Measure("ratio") is { } ratio && (ratio.Low < 0.1 || ratio.High > 10)) inputs.Refuse("ratio", "write a ratio from 0.1 to 10");
        var gaps = inputs.Count("sheets")!.Value - 1;
        var gap = inputs.Measure("gap");
        if (gap is { Low: < 0 }) inputs.Refuse("gap", "write 0 or more");
        else if (gaps > 0 && gap is null) inputs.Refuse("gap", "write the gap between two sheets as they run; without it the way over several sheets is unknown");
        else if (gaps == 0 && gap is not null) inputs.Refuse("sheets", "write over how many sheets the distance runs, 2 or more; or leave the gap out, which counts only between sheets");
        var machine = inputs.Text("machine");
        var known = record.Machines.FirstOrDefault(m => m.Id == machine);
        if (machine is not null && known is null)
            inputs.Refuse("machine", record.Machines.Count == 0 ? "no machine is on record here; leave it out"
                : $"there is no machine or family '{machine}' on record; {Suggest.Hint(machine, record.Machines.Select(m => m.Id), "leave it out to search every family")}");
        var repeat = Repeat.One(inputs.Measure("distance")!.Value, inputs.Count("repeats")!.Value, gap ?? 0, gaps);
        if (repeat.Low < Least) inputs.Refuse("distance", $"write a distance that makes at least {Figure.Of(Least, 1, "mm")} a repeat");
        if (inputs.Problems.Count > 0) return null;

        var around = Repeat.Around(repeat, inputs.Measure("ratio")!.Value);
        var band = Repeat.Within(around, tolerance);
        List<WorkingLine> lines =
        [
            new("one repeat", Figure.Of(repeat, 2, "mm"), gaps > 0 ? "(distance + gaps between the sheets) / repeats" : "distance / repeats"),
            new("once around", Figure.Of(around, 2, "mm"), "repeat · skin speed / paper speed; for a belt, its loop"),
            new("diameter", Figure.Of(Repeat.Diameter(around), 2, "mm"), "once around / π"),
            new("diameter with tolerance", Figure.Of(Repeat.Diameter(band), 2, "mm"), $"{Figure.Number(tolerance.High, 2)} % to either side; rubber squashes and slips (trade practice, no source)"),
        ];
        var matches = RepeatMatch.Of(record.Turning.Where(p => known is null || p.Family == known.Family), around, tolerance);
        var suspects = matches.Where(m => m.Suspect).ToList();
        var misses = matches.Where(m => !m.Suspect).Take(NearMisses);
        lines.AddRange(suspects.Concat(misses).Select(Line));
        return new Working { Lines = lines, Answer = $"Marks every {Figure.Of(repeat, 1, "mm")}: something about {Figure.Of(Repeat.Diameter(around), 1, "mm")} across. {Found(matches, suspects, known)}", Cautions = RepeatCautions.All };
    }

    private static WorkingLine Line(RepeatMatch match) => new(
        match.Place.Name,
        $"{Figure.Of(match.Place.Around, 1, "mm")}, {Off(match)}",
        $"{(match.Suspect ? "suspect" : "near miss")}: {match.Place.Position}; {match.Place.Because}");

    private static string Off(RepeatMatch match) => Figure.Of(Math.Abs(match.Misfit), 1, "%") + (match.Misfit < 0 ? " less" : " more");

    private static string Found(IReadOnlyList<RepeatMatch> matches, List<RepeatMatch> suspects, KnownMachine? known)
    {
        var where = known is null ? "on record" : "on record for " + known.Name;
        return matches.Count == 0 ? $"No place that turns is {where}, so none was compared."
            : suspects.Count > 0 ? $"Suspects {where}: {string.Join("; ", suspects.Select(s => s.Place.Name))}."
            : $"Nothing {where} turns so; the nearest is {matches[0].Place.Name}, {Off(matches[0])}.";
    }
}
