using System.Text.Json.Nodes;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Cli.Printing;

/// <summary>Prints what combining two copies did, or would do.</summary>
internal static class CombinePrinter
{
    internal static void Print(CombinePlan plan, bool isDryRun, TextWriter output)
    {
        if (plan.Diagnostics.Count > 0) DiagnosticPrinter.Print(plan.Diagnostics, output);
        if (plan.IsRefused)
        {
            output.WriteLine("Nothing was taken. Mend the errors above, and combine again.");
            return;
        }
        output.WriteLine(plan.Ours == plan.Theirs ? $"Another copy of {plan.Ours}." : $"The library {plan.Theirs} comes to {plan.Ours}.");
        foreach (var (outcome, heading) in CombineGroups.All)
        {
            var decisions = plan.Decisions.Where(d => d.Outcome == outcome).ToList();
            if (decisions.Count == 0) continue;
            output.WriteLine();
            output.WriteLine($"{heading} ({decisions.Count}):");
            foreach (var decision in decisions) output.WriteLine("  " + Line(decision));
        }
        output.WriteLine();
        output.WriteLine($"{Count(plan, CombineOutcome.Alike)} alike, {Count(plan, CombineOutcome.OursNewer)} newer here, {Count(plan, CombineOutcome.OnlyHere)} only here: nothing to do for those.");
        var choices = Count(plan, CombineOutcome.ToChoose) + Count(plan, CombineOutcome.KeptAside);
        if (choices > 0) output.WriteLine("crossref choose shows what to choose from, and puts the text that is right in force.");
        output.WriteLine(plan.Changes.Count == 0 ? "Nothing had to be written." : isDryRun ? "Nothing was written. Leave --dry-run out to do it." : plan.Changes.Count == 1 ? "1 file was written." : $"{plan.Changes.Count} files were written.");
    }

    internal static JsonObject ToJson(CombinePlan plan, IReadOnlyList<Diagnostic> after, bool isDryRun) => DiagnosticPrinter.AddTo(
        new JsonObject
        {
            ["ours"] = plan.Ours,
            ["theirs"] = plan.Theirs,
            ["refused"] = plan.IsRefused,
            ["written"] = !isDryRun && !plan.IsRefused,
            ["decisions"] = JsonPrinter.Array(plan.Decisions, d => new JsonObject
            {
                ["outcome"] = Words.Of(d.Outcome),
                ["type"] = d.Outcome == CombineOutcome.Picture ? "picture" : Words.Of(d.Type),
                ["id"] = d.Name,
                ["file"] = d.File,
                ["keys"] = JsonPrinter.Array(d.Keys),
                ["why"] = d.Why,
            }),
            ["files"] = JsonPrinter.Array(plan.Changes.Select(c => c.Path)),
        },
        [.. plan.Diagnostics, .. after]);

    private static string Line(Decision decision)
    {
        var what = decision.Outcome == CombineOutcome.Picture ? decision.Name : $"{Words.Of(decision.Type)} {decision.Name}";
        var where = decision.Outcome == CombineOutcome.Picture ? "" : $", in {decision.File}";
        var keys = CombineGroups.Of(decision.Keys);
        return what + where + keys + (decision.Why.Length == 0 ? "" : ". " + decision.Why);
    }

    private static int Count(CombinePlan plan, CombineOutcome outcome) => plan.Decisions.Count(d => d.Outcome == outcome);
}
