using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;

namespace Crossref.Cli.Printing;

/// <summary>Prints a calculation line by line.</summary>
internal static class WorkingPrinter
{
    internal static void Print(Calculator calculator, Working working, TextWriter output)
    {
        output.WriteLine(calculator.Title);
        output.WriteLine();
        var what = working.Lines.Max(l => l.What.Length);
        var figure = Math.Min(working.Lines.Max(l => l.Figure.Length), 28);
        foreach (var line in working.Lines)
            output.WriteLine($"  {line.What.PadRight(what)}  {line.Figure.PadRight(figure)}  {line.How}".TrimEnd());
        output.WriteLine();
        output.WriteLine(working.Answer);
        foreach (var caution in working.Cautions) output.WriteLine("Mind: " + caution);
    }

    internal static JsonObject ToJson(Calculator calculator, Working working) => new()
    {
        ["calculator"] = calculator.Name,
        ["lines"] = JsonPrinter.Array(working.Lines, l => new JsonObject { ["what"] = l.What, ["figure"] = l.Figure, ["how"] = l.How }),
        ["answer"] = working.Answer,
        ["cautions"] = JsonPrinter.Array(working.Cautions),
    };
}
