using System.Globalization;
using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// Looks for what tells contradicting statements apart: something that is on record for every one of them and never
/// the same on both sides.
/// </summary>
public sealed class SplitFinder(Library library)
{
    /// <summary>What splits them, in words, most telling first; empty when nothing on record does, or when one side has none.</summary>
    public IReadOnlyList<string> Find(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        if (positives.Count == 0 || negatives.Count == 0) return [];
        var found = new List<string>();
        Add("model", s => s.OnlyIf.Models.Count > 0 ? s.OnlyIf.Models : One(MachineOf(s)?.Model));
        if (SerialSplit(positives, negatives) is { } serials) found.Add(serials);
        Add("mains", s => One((s.OnlyIf.Mains ?? MachineContext.Of(library, MachineOf(s)).Mains)?.ToString("0.##' V'", CultureInfo.InvariantCulture)));
        Add("family", s => One(MachineOf(s)?.Family.Id));
        Add("machine", s => One(s.Machine));
        if (DateSplit(positives, negatives) is { } dates) found.Add(dates);
        return found;

        void Add(string what, Func<Statement, IReadOnlyList<string>> values)
        {
            var yes = Values(positives, values);
            var no = Values(negatives, values);
            if (yes is null || no is null || yes.Overlaps(no)) return;
            found.Add($"{what} (yes: {string.Join(" or ", yes)}; no: {string.Join(" or ", no)})");
        }
    }

    // Null when a statement has no value, for then nothing is known about it.
    private static SortedSet<string>? Values(IReadOnlyList<Statement> statements, Func<Statement, IReadOnlyList<string>> values)
    {
        var all = statements.Select(values).ToList();
        return all.Count == 0 || all.Exists(v => v.Count == 0) ? null : new SortedSet<string>(all.SelectMany(v => v), StringComparer.Ordinal);
    }

    private string? SerialSplit(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        var yes = positives.Select(SerialsOf).ToList();
        var no = negatives.Select(SerialsOf).ToList();
        if (AllBefore(yes, no)) return "serial (yes on the earlier ones, no on the later ones)";
        return AllBefore(no, yes) ? "serial (no on the earlier ones, yes on the later ones)" : null;
    }

    private static bool AllBefore(List<(string? From, string? To)> early, List<(string? From, string? To)> late) =>
        early.TrueForAll(e => late.TrueForAll(l => e.To is not null && l.From is not null && Serial.Compare(e.To, l.From) < 0));

    // The range a statement speaks of: its condition, or the one machine it was tried in.
    private (string? From, string? To) SerialsOf(Statement s) =>
        s.OnlyIf.SerialFrom is null && s.OnlyIf.SerialTo is null
            ? (MachineOf(s)?.Serial, MachineOf(s)?.Serial)
            : (s.OnlyIf.SerialFrom, s.OnlyIf.SerialTo);

    private static string? DateSplit(IReadOnlyList<Statement> positives, IReadOnlyList<Statement> negatives)
    {
        if (positives.Concat(negatives).Any(s => s.Date.IsUnknown)) return null;
        if (positives.Max(s => s.Date) < negatives.Min(s => s.Date)) return "date (yes earlier, no later)";
        return negatives.Max(s => s.Date) < positives.Min(s => s.Date) ? "date (no earlier, yes later)" : null;
    }

    private Machine? MachineOf(Statement s) => s.Machine is { } id ? library.Machines.GetValueOrDefault(id) : null;

    private static IReadOnlyList<string> One(string? value) => value is null ? [] : [value];
}
