using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Cli.Printing;

/// <summary>Prints a calculation line by line, then the parts on record that may be the one in hand.</summary>
internal sealed class WorkingPrinter
{
    private const int MostOnScreen = 10;

    private readonly Calculator _calculator;
    private readonly Working _working;
    private readonly Library? _library;
    private readonly House? _house;
    private readonly IReadOnlyList<FoundPart> _found = [];

    /// <summary>Looks the parts up; without a library there are none.</summary>
    internal WorkingPrinter(Calculator calculator, Working working, Library? library)
    {
        (_calculator, _working, _library) = (calculator, working, library);
        if (library is null || working.Sought is not { Sizes.Count: > 0 } sought) return;
        _found = SizeSearch.Find(library, sought);
        _house = new House(library);
    }

    internal void Print(TextWriter output)
    {
        output.WriteLine(_calculator.Title);
        output.WriteLine();
        var what = _working.Lines.Max(l => l.What.Length);
        var figure = Math.Min(_working.Lines.Max(l => l.Figure.Length), 28);
        foreach (var line in _working.Lines)
            output.WriteLine($"  {line.What.PadRight(what)}  {line.Figure.PadRight(figure)}  {line.How}".TrimEnd());
        output.WriteLine();
        output.WriteLine(_working.Answer);
        foreach (var caution in _working.Cautions) output.WriteLine("Mind: " + caution);
        if (_house is null) return;
        output.WriteLine();
        output.WriteLine(_found.Count == 0 ? "No part on record has these sizes." : "On record with these sizes, to look at and not yet an answer:");
        foreach (var found in _found.Take(MostOnScreen)) Print(found, output);
        if (_found.Count > MostOnScreen) output.WriteLine($"  ... and {_found.Count - MostOnScreen} more; --json prints them.");
    }

    internal JsonObject ToJson() => new()
    {
        ["calculator"] = _calculator.Name,
        ["lines"] = JsonPrinter.Array(_working.Lines, l => new JsonObject { ["what"] = l.What, ["figure"] = l.Figure, ["how"] = l.How }),
        ["answer"] = _working.Answer,
        ["cautions"] = JsonPrinter.Array(_working.Cautions),
        ["onRecord"] = JsonPrinter.Array(_found, f => new JsonObject
        {
            ["part"] = f.Part,
            ["agrees"] = JsonPrinter.Array(f.Agreeing),
            ["unknown"] = JsonPrinter.Array(f.Unknown),
            ["inHouse"] = _house!.Of(f.Part).Sum(i => i.Quantity),
        }),
    };

    private void Print(FoundPart found, TextWriter output)
    {
        var part = _library!.Parts[found.Part];
        output.WriteLine($"  {part.CurrentNumber}  {part.Name} ({part.Id})");
        var unknown = string.Join(", ", found.Unknown);
        output.WriteLine($"      agrees: {string.Join(", ", found.Agreeing)}{(unknown.Length > 0 ? "; unknown: " + unknown : "")}");
        if (part.IsSafety) output.WriteLine("      A safety part: sizes never make it a fit, only the maker's document does.");
        foreach (var item in _house!.Of(found.Part))
            output.WriteLine($"      In the house: {item.Quantity} in {Words.Of(item.Holder)} {item.Id}{(item.Bin is { } bin ? $", {bin}" : "")}");
    }
}
