using System.Text.Json.Nodes;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Printing;

/// <summary>Prints where a part fits.</summary>
internal sealed class WherePrinter(Library library)
{
    internal void Print(WhereAnswer answer, TextWriter output)
    {
        var part = library.Parts[answer.Part];
        output.WriteLine($"{part.CurrentNumber}  {part.Name} ({part.Id})");
        Section("Fits", [.. answer.Fits.Where(f => f.Candidate.Accepted)], output);
        Section("Stands, but does not count as an answer there", [.. answer.Fits.Where(f => !f.Candidate.Accepted && !f.Candidate.IsLead)], output);
        Section("Something to try, never an answer", [.. answer.Fits.Where(f => f.Candidate.IsLead)], output);
        if (answer.Refused.Count > 0) output.WriteLine("\nDisputed or ruled out");
        foreach (var refused in answer.Refused)
        {
            output.WriteLine($"  {refused.Position} — {(refused.Disputed ? StandingWord.Disputed : StandingWord.RuledOut)}");
            output.WriteLine($"      {refused.Refusal.Reason}");
        }
        Section("May stand in for it", answer.StandIns.Where(s => s.Stands), s => s.Part, output);
        Section("Disputed or ruled out in its place", answer.StandIns.Where(s => !s.Stands), s => s.Part, output);
        Section("It may stand in for", answer.StandsInFor.Where(s => s.Stands), s => s.InsteadOf, output);
        Section("It is disputed or ruled out in the place of", answer.StandsInFor.Where(s => !s.Stands), s => s.InsteadOf, output);
        if (answer.Fits.Count + answer.Refused.Count + answer.StandIns.Count + answer.StandsInFor.Count == 0) output.WriteLine("  Nothing is recorded about where it fits.");
    }

    internal static JsonObject ToJson(WhereAnswer answer) => new()
    {
        ["part"] = answer.Part,
        ["fits"] = JsonPrinter.Array(answer.Fits, f =>
        {
            var node = FitsPrinter.ToJson(f.Candidate);
            node.Remove("part");
            node.Insert(0, "position", f.Position);
            return node;
        }),
        ["disputed"] = Refused(answer, disputed: true),
        ["ruledOut"] = Refused(answer, disputed: false),
        ["standIns"] = JsonPrinter.Array(answer.StandIns, ToJson),
        ["standsInFor"] = JsonPrinter.Array(answer.StandsInFor, ToJson),
    };

    private static JsonArray Refused(WhereAnswer answer, bool disputed) =>
        JsonPrinter.Array(answer.Refused.Where(r => r.Disputed == disputed), r => new JsonObject
        {
            ["position"] = r.Position,
            ["reason"] = r.Refusal.Reason,
            ["claims"] = JsonPrinter.Array(r.Refusal.Claims),
        });

    private static JsonObject ToJson(StandIn standIn) => new()
    {
        ["part"] = standIn.Part,
        ["insteadOf"] = standIn.InsteadOf,
        ["where"] = standIn.Where ?? "anywhere",
        ["relation"] = standIn.Word,
        ["standing"] = standIn.Fact.Standing is { } standing ? Words.Of(standing) : null,
        ["reason"] = standIn.Reason,
    };

    private static void Section(string title, IReadOnlyList<WhereFit> fits, TextWriter output)
    {
        if (fits.Count == 0) return;
        output.WriteLine();
        output.WriteLine(title);
        foreach (var fit in fits)
        {
            output.WriteLine($"  {fit.Position} — {fit.Candidate.Standing}");
            output.WriteLine($"      {fit.Candidate.Reason}");
            if (fit.Candidate.Conditions.Count > 0) output.WriteLine($"      Check first: {string.Join("; ", fit.Candidate.Conditions)}");
        }
    }

    private void Section(string title, IEnumerable<StandIn> standIns, Func<StandIn, string> other, TextWriter output)
    {
        if (!standIns.Any()) return;
        output.WriteLine();
        output.WriteLine(title);
        foreach (var standIn in standIns)
        {
            var part = library.Parts[other(standIn)];
            output.WriteLine($"  {part.CurrentNumber} ({part.Id}) — {standIn.Word}{(standIn.Where is { } where ? $" in {where}" : "")}{(standIn.Fact.Standing is { } standing ? $", {Words.Of(standing)}" : "")}");
            output.WriteLine($"      {standIn.Reason}");
        }
    }
}
