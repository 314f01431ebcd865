using System.Text.RegularExpressions;
using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Evidence;

/// <summary>
/// What splits two sides, by the definition alone and slowly: a thing on record for every statement, with no value on
/// both sides; for serials and dates, one side wholly before the other.
/// </summary>
internal sealed partial class NaiveSplits(Library library)
{
    /// <summary>The kinds that split, in their order; of serial and date also which side comes first.</summary>
    internal IReadOnlyList<string> Find(IReadOnlyList<Statement> yes, IReadOnlyList<Statement> no)
    {
        if (yes.Count == 0 || no.Count == 0) return [];
        var found = new List<string>();
        if (NeverTheSame(yes, no, Models)) found.Add("model");
        found.AddRange(Order("serial", yes, no, (a, b) => After(Range(a).To, Range(b).From)));
        if (NeverTheSame(yes, no, Mains)) found.Add("mains");
        if (NeverTheSame(yes, no, Families)) found.Add("family");
        if (found.Count > 0) return found;
        if (NeverTheSame(yes, no, s => s.Machine is null ? [] : [s.Machine])) found.Add("machine");
        found.AddRange(Order("date", yes, no, (a, b) => Days(a.Date) is var (_, last) && Days(b.Date) is var (first, _) && string.CompareOrdinal(last, first) < 0));
        return found;
    }

    private static bool NeverTheSame(IReadOnlyList<Statement> yes, IReadOnlyList<Statement> no, Func<Statement, IEnumerable<string>> values) =>
        yes.Concat(no).All(s => values(s).Any()) && !yes.Any(y => no.Any(n => values(y).Any(v => values(n).Contains(v))));

    private static IEnumerable<string> Order(string kind, IReadOnlyList<Statement> yes, IReadOnlyList<Statement> no, Func<Statement, Statement, bool> before)
    {
        // All serials or dates of one side must be comparable with each other too, which follows from the other side's.
        if (yes.All(y => no.All(n => before(y, n)))) yield return kind + ": yes first";
        if (no.All(n => yes.All(y => before(n, y)))) yield return kind + ": no first";
    }

    private IEnumerable<string> Models(Statement s) =>
        s.OnlyIf.Models.Count > 0 ? s.OnlyIf.Models : Machine(s)?.Model is { } model ? [model] : [];

    private IEnumerable<string> Mains(Statement s)
    {
        if (s.OnlyIf.Mains is { } limited) return [$"{limited}"];
        if (Machine(s) is not { } machine) return [];
        var model = library.Families[machine.Family.Id].Models.FirstOrDefault(m => m.Name == machine.Model);
        return (machine.Mains ?? model?.Mains ?? library.Card.Mains) is { } volts ? [$"{volts}"] : [];
    }

    private IEnumerable<string> Families(Statement s)
    {
        if (s.Where is { } where) return [where.Contains('/', StringComparison.Ordinal) ? where[..where.IndexOf('/', StringComparison.Ordinal)] : where];
        return Machine(s) is { } machine ? [machine.Family.Id] : [];
    }

    private (string? From, string? To) Range(Statement s)
    {
        if (s.OnlyIf.SerialFrom is not null || s.OnlyIf.SerialTo is not null) return (s.OnlyIf.SerialFrom, s.OnlyIf.SerialTo);
        return (Machine(s)?.Serial, Machine(s)?.Serial);
    }

    private static bool After(string? end, string? start)
    {
        if (end is null || start is null) return false;
        var (a, b) = (Plate().Match(end), Plate().Match(start));
        return a.Success && b.Success && string.Equals(a.Groups[1].Value, b.Groups[1].Value, StringComparison.OrdinalIgnoreCase) &&
            int.Parse(a.Groups[2].Value) < int.Parse(b.Groups[2].Value);
    }

    private static (string First, string Last)? Days(PartialDate date) => (date.Year, date.Month, date.Day) switch
    {
        (0, _, _) => null,
        (var y, 0, _) => ($"{y}-01-01", $"{y}-12-31"),
        (var y, var m, 0) => ($"{y}-{m:00}-01", $"{y}-{m:00}-{DateTime.DaysInMonth(y, m)}"),
        (var y, var m, var d) => ($"{y}-{m:00}-{d:00}", $"{y}-{m:00}-{d:00}"),
    };

    private Machine? Machine(Statement s) => library.Machines.Values.FirstOrDefault(m => m.Id == s.Machine);

    [GeneratedRegex("^([A-Za-z]*)([0-9]+)$")]
    private static partial Regex Plate();
}
