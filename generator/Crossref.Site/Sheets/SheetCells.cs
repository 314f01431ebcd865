using System.Text.RegularExpressions;
using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Sheets;

/// <summary>Makes the values of a record out of cells.</summary>
internal sealed partial class SheetCells(SheetKind kind, DiagnosticLog log)
{
    /// <summary>The value of a cell; null for an empty one.</summary>
    internal Node? Read(string cell, SheetField field, Place place)
    {
        if (string.IsNullOrWhiteSpace(cell)) return null;
        cell = cell.Replace("\r\n", "\n", StringComparison.Ordinal);
        if (IsRefused(cell, field, place)) return new RefusedNode(place);
        var text = CellText.Read(cell).Trim();
        if (text.Length == 0) return null;
        if (log.AddHidden(text, place, "delete the cell and type it anew")) return new RefusedNode(place);
        return Value(text, field, kind.ShapeOf(field), place);
    }

    private bool IsRefused(string cell, SheetField field, Place place)
    {
        var shown = ScalarChecker.Shown(cell);
        var isFormula = CellText.IsFormula(cell) || kind.ShapeOf(field).Kind == ValueKind.List && ListCell.Read(cell).Any(CellText.IsFormula);
        if (isFormula && !(field.IsFigure && Negative().IsMatch(cell)))
            log.Add(SheetCodes.Formula, place, $"'{shown}' is a formula to a spreadsheet", $"write its result; a text that begins so needs an apostrophe before it: '{shown}");
        else if (Fault().IsMatch(cell))
            log.Add(SheetCodes.Spoiled, place, $"'{shown}' is what a spreadsheet shows when it cannot work a cell out", "mend the cell there, or empty it");
        else if (!field.IsFigure && Made().IsMatch(cell))
            log.Add(SheetCodes.Spoiled, place, $"'{shown}' looks like a text of which a spreadsheet has made a number or a date", $"set the column to text there and type it anew; if it is meant so, put an apostrophe before it: '{shown}");
        else
            return false;
        return true;
    }

    private static Node Value(string text, SheetField field, ValueShape shape, Place place) => shape.Kind switch
    {
        ValueKind.List => new ListNode(place, [.. ListCell.Read(text).Select(t => Item(t, field.Key, place))]),
        ValueKind.TrueFalse => new ScalarNode(place, text.ToUpperInvariant() switch { "YES" or "Y" or "X" or "1" or "TRUE" => "true", "NO" or "N" or "0" or "FALSE" => "false", _ => text }),
        ValueKind.Word => new ScalarNode(place, Word(text, shape.Words)),
        _ => new ScalarNode(place, text),
    };

    private static string Word(string text, IReadOnlyList<string> words) =>
        text.ToLowerInvariant().Replace(' ', '-') is var word && words.Contains(word, StringComparer.Ordinal) ? word : text;

    private static Node Item(string text, string key, Place place)
    {
        ScalarNode Scalar(string value) => new(place, value);
        MapEntry Entry(string name, string value) => new(name, place, Scalar(value));
        return (key, ListCell.Read(text, ListCell.Within).ToList()) switch
        {
            ("also", [var maker, var number]) => new MapNode(place, [Entry("maker", maker), Entry("number", number)]),
            ("also", [var maker, var number, var source]) => new MapNode(place, [Entry("maker", maker), Entry("number", number), Entry("source", source)]),
            ("contains", _) when Times().Match(text) is { Success: true } m =>
                new MapNode(place, [Entry("part", m.Groups["part"].Value), Entry("quantity", m.Groups["quantity"].Value)]),
            _ => Scalar(text),
        };
    }

    [GeneratedRegex(@"^-[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Negative();

    [GeneratedRegex(@"^\s*#(REF!|N/A|NAME\?|VALUE!|DIV/0!|NUM!|NULL!|#+\s*$)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Fault();

    // 1.2E+11, and 2-Jan or Jan-02 as spreadsheets write a day of a month in English.
    [GeneratedRegex(@"^\s*([0-9](\.[0-9]+)?E\+[0-9]+|[0-9]{1,2}-(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)|(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)-[0-9]{2})\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Made();

    [GeneratedRegex(@"^(?<quantity>[0-9]+)\s*[x×]\s*(?<part>\S+)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Times();
}
