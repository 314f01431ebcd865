using System.Text.Json.Nodes;
using Crossref.Core.Checking;
using Crossref.Site.Sheets;

namespace Crossref.Cli.Printing;

/// <summary>Prints what would come, or came, of a sheet.</summary>
internal static class ImportPrinter
{
    private const int MostNames = 10;
    private const int MostProblems = 100;

    internal static void Print(ImportPlan plan, string file, bool apply, bool json, TextWriter output)
    {
        if (json) JsonPrinter.Print(ToJson(plan, file, apply), output);
        else PrintText(plan, file, apply, output);
    }

    private static void PrintText(ImportPlan plan, string file, bool apply, TextWriter output)
    {
        if (plan.Written is { } written)
        {
            output.WriteLine($"{file}: a sheet of {plan.Kind}; {written}.");
            var width = plan.Columns.Max(c => c.Heading.Length);
            foreach (var column in plan.Columns) output.WriteLine($"  {column.Letter,-3} {column.Heading.PadRight(width)}  {(column.Field is { } field ? "→ " + field : "not used")}");
        }
        if (plan.Diagnostics.Count > 0) PrintProblems(plan.Diagnostics, output);
        if (plan.HasErrors)
        {
            output.WriteLine("Nothing was written. Mend the sheet and run this again.");
            return;
        }
        if (plan.Known.Count > 0) output.WriteLine($"On record already, with the same values: {plan.Known.Count} ({Names(plan.Known)}).");
        if (plan.New.Count == 0)
        {
            output.WriteLine("Nothing is new.");
            return;
        }
        output.WriteLine($"New {plan.Kind}: {plan.New.Count} ({Names(plan.New)}).");
        foreach (var change in plan.Changes) output.WriteLine($"  {(apply ? "written" : "would be written")}: {change.Path}");
        if (!apply) output.WriteLine("Nothing was written yet; --apply writes it.");
    }

    // A column that is wrong is wrong in every row, and what stands above it on the screen must not be lost.
    private static void PrintProblems(IReadOnlyList<Diagnostic> diagnostics, TextWriter output)
    {
        DiagnosticPrinter.PrintLines([.. diagnostics.Take(MostProblems)], output);
        if (diagnostics.Count > MostProblems) output.WriteLine($"... and {diagnostics.Count - MostProblems} more; --json prints them all.");
        output.WriteLine(DiagnosticPrinter.Total(diagnostics));
    }

    private static JsonObject ToJson(ImportPlan plan, string file, bool apply) => DiagnosticPrinter.AddTo(
        new JsonObject
        {
            ["file"] = file,
            ["as"] = plan.Kind,
            ["read"] = plan.Written,
            ["columns"] = JsonPrinter.Array(plan.Columns, c => new JsonObject { ["column"] = c.Letter, ["heading"] = c.Heading, ["field"] = c.Field }),
            ["new"] = JsonPrinter.Array(plan.New),
            ["known"] = JsonPrinter.Array(plan.Known),
            ["files"] = JsonPrinter.Array(plan.Changes.Select(c => c.Path)),
            ["written"] = apply && plan.Changes.Count > 0,
        },
        plan.Diagnostics);

    private static string Names(IReadOnlyList<string> ids) => string.Join(", ", ids.Take(MostNames)) + (ids.Count > MostNames ? $" and {ids.Count - MostNames} more" : "");
}
