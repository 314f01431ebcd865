using System.Globalization;
using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// Looks for what tells contradicting statements apart: something that is on record for every one of them and never
/// the same on both sides. What a statement itself is limited to counts before what is known of its machine.
/// </summary>
public sealed class SplitFinder(Library library)
{
    /// <summary>
    /// What splits them, in words, most telling first; empty when nothing on record does, or when one side has none.
    /// How machines are built (model, serial, mains, family) also tells what to expect in the next one. Two findings
    /// nearly always differ in the machine and the day as well, so these are named only when nothing else splits.
    /// </summary>
    public IReadOnlyList<string> Find(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        if (positives.Count == 0 || negatives.Count == 0) return [];
        List<string> build = Named(
            Apart("model", s => s.OnlyIf.Models.Count > 0 ? s.OnlyIf.Models : One(MachineOf(s)?.Model)),
            SerialSplit(positives, negatives),
            Apart("mains", s => One((s.OnlyIf.Mains ?? MachineContext.Of(library, MachineOf(s)).Mains)?.ToString("0.##' V'", CultureInfo.InvariantCulture))),
            Apart("family", s => One(FamilyOf(s)), id => library.Families.GetValueOrDefault(id)?.Name));
        return build.Count > 0 ? build : Named(
            Apart("machine", s => One(s.Machine), library.MachineName),
            DateSplit(positives, negatives));

        string? Apart(string what, Func<Statement, IReadOnlyList<string>> values, Func<string, string?>? name = null)
        {
            var (yes, no) = (Values(positives, values), Values(negatives, values));
            if (yes is null || no is null || yes.Overlaps(no)) return null;
            return $"{what} (yes: {List(yes)}; no: {List(no)})";

            string List(SortedSet<string> all) => string.Join(" or ", all.Select(v => name?.Invoke(v) ?? v));
        }
    }

    private static List<string> Named(params ReadOnlySpan<string?> found)
    {
        var names = new List<string>();
        foreach (var split in found)
            if (split is not null) names.Add(split);
        return names;
    }

    // Null when a statement has no value, for then nothing is known about it.
    private static SortedSet<string>? Values(IReadOnlyList<Statement> statements, Func<Statement, IReadOnlyList<string>> values)
    {
        var all = statements.Select(values).ToList();
        return all.Exists(v => v.Count == 0) ? null : new SortedSet<string>(all.SelectMany(v => v), StringComparer.Ordinal);
    }

    private string? SerialSplit(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        var (yes, no) = (positives.Select(SerialsOf).ToList(), negatives.Select(SerialsOf).ToList());
        if (Boundary(yes, no) is var (lastYes, firstNo)) return $"serial (yes up to {lastYes}, no from {firstNo})";
        return Boundary(no, yes) is var (lastNo, firstYes) ? $"serial (no up to {lastNo}, yes from {firstYes})" : null;
    }

    // The highest serial of the one side and the lowest of the other, if every range of the one ends before every range of the other begins.
    private static (string Last, string First)? Boundary(List<(string? From, string? To)> early, List<(string? From, string? To)> late)
    {
        var (ends, starts) = (early.Select(e => e.To).ToList(), late.Select(l => l.From).ToList());
        var serials = ends.Concat(starts).Select(s => s is null ? null : Serial.Parse(s)).ToList();
        if (serials.Contains(null) || serials.DistinctBy(s => s!.Value.Letters).Count() > 1) return null;
        var (last, first) = (ends.MaxBy(s => Serial.Parse(s!)!.Value.Number)!, starts.MinBy(s => Serial.Parse(s!)!.Value.Number)!);
        return Serial.Compare(last, first) < 0 ? (last, first) : null;
    }

    // The range a statement speaks of: its condition, or the one machine it was tried in.
    private (string? From, string? To) SerialsOf(Statement s) =>
        s.OnlyIf.SerialFrom is null && s.OnlyIf.SerialTo is null
            ? (MachineOf(s)?.Serial, MachineOf(s)?.Serial)
            : (s.OnlyIf.SerialFrom, s.OnlyIf.SerialTo);

    private static string? DateSplit(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        if (Boundary(positives, negatives) is var (lastYes, firstNo)) return $"date (yes until {lastYes}, no since {firstNo})";
        return Boundary(negatives, positives) is var (lastNo, firstYes) ? $"date (no until {lastNo}, yes since {firstYes})" : null;
    }

    // A month or a year is before a day only if its last day is.
    private static (PartialDate Last, PartialDate First)? Boundary(IReadOnlyList<Statement> early, IReadOnlyList<Statement> late)
    {
        if (early.Concat(late).Any(s => s.Date.IsUnknown)) return null;
        var (last, first) = (early.MaxBy(s => s.Date.Latest)!.Date, late.MinBy(s => s.Date.Earliest)!.Date);
        return last.SurelyBefore(first) ? (last, first) : null;
    }

    private Machine? MachineOf(Statement s) => s.Machine is { } id ? library.Machines.GetValueOrDefault(id) : null;

    // A comparison may be limited to a family or to one position of it.
    private string? FamilyOf(Statement s) => s.Where?.Split('/')[0] ?? MachineOf(s)?.Family.Id;

    private static IReadOnlyList<string> One(string? value) => value is null ? [] : [value];
}
