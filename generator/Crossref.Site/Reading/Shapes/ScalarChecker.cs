using System.Globalization;
using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Checks single values. A value that cannot be read is reported and refused.</summary>
internal sealed partial class ScalarChecker(DiagnosticLog log)
{
    /// <summary>The most characters an id may have.</summary>
    internal const int LongestId = 40;
    private const int LongestShown = 60;

    /// <summary>Names of devices on Windows, which no file there may have.</summary>
    internal static readonly IReadOnlyList<string> DeviceNames =
        [
            "con", "prn", "aux", "nul",
            .. Enumerable.Range(1, 9).SelectMany(n => new[] { FormattableString.Invariant($"com{n}"), FormattableString.Invariant($"lpt{n}") }),
        ];

    /// <summary>Whether any value was refused, or guessed.</summary>
    internal bool Refused { get; private set; }

    /// <summary>The value, or the word that was surely meant, or nothing.</summary>
    internal Node Check(ScalarNode value, ValueShape shape, string name)
    {
        var text = value.Text;
        return shape.Kind switch
        {
            ValueKind.Text => value with { Text = OneLine(text) },
            ValueKind.Id => CheckId(value),
            ValueKind.Word => CheckWord(value, shape, name),
            ValueKind.OpenWord => CheckOpenWord(value, shape),
            ValueKind.Quantity => CheckQuantity(value, shape, name),
            ValueKind.Number => CheckNumber(value, shape, name),
            ValueKind.Whole => CheckWhole(value, shape, name),
            ValueKind.Life => Scalars.TryLife(text, out _) ? value
                : Refuse(value, ShapeCodes.BadQuantity, $"'{Shown(text)}' is not a life", "write a plain number and sheets, cycles or hours, such as 400000 cycles"),
            ValueKind.Wait => Scalars.TryWait(text, out _) ? value
                : Refuse(value, ShapeCodes.BadQuantity, $"'{Shown(text)}' is not a waiting time", "write minutes or hours, such as 45 min or 1.5 h"),
            ValueKind.TrueFalse => text is "true" or "false" ? value
                : Refuse(value, ShapeCodes.NotTrueOrFalse, $"'{Shown(text)}' is neither true nor false", $"write {name}: true or {name}: false"),
            ValueKind.Date => PartialDate.TryParse(text, out _) ? value : Refuse(value, ShapeCodes.BadDate, $"'{Shown(text)}' is not a date", DateHint(text)),
            _ => value,
        };
    }

    /// <summary>Reports an id that is not one. The value is kept, so that whatever refers to it still finds it.</summary>
    internal Node CheckId(ScalarNode value)
    {
        var id = value.Text;
        if (DeviceNames.Contains(id, StringComparer.Ordinal))
            log.Add(ShapeCodes.DeviceName, value.Place, $"'{id}' is the name of a device on Windows", $"choose another id, such as {id}-1");
        else if (id.Length > LongestId)
            log.Add(ShapeCodes.BadId, value.Place, $"'{Shown(id)}' has {id.Length} characters", $"an id has at most {LongestId}");
        else if (!Id().IsMatch(id))
            log.Add(ShapeCodes.BadId, value.Place, $"'{Shown(id)}' is not an id", IdHint(id));
        return value;
    }

    /// <summary>A text as pages and screens show it. With a line feed in it, a name could pass for a line of its own.</summary>
    internal static string OneLine(string text) =>
        text.AsSpan().ContainsAny('\n', '\t') ? string.Join(' ', text.Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries)) : text;

    /// <summary>A piece of somebody's text that is fit for a message: one line, not too long.</summary>
    internal static string Shown(string text)
    {
        var line = string.Concat(text.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
        return line.Length <= LongestShown ? line : line[..LongestShown] + "…";
    }

    private Node CheckWord(ScalarNode value, ValueShape shape, string name)
    {
        if (shape.Words.Contains(value.Text, StringComparer.Ordinal)) return value;
        if (shape.Reached.Contains(value.Text, StringComparer.Ordinal))
            return Refuse(value, ShapeCodes.ProvenWritten, $"nobody writes {name}: {value.Text}, it is reached", $"write {name}: ran with its count; enough of it proves");
        log.Add(ShapeCodes.UnknownWord, value.Place, $"'{Shown(value.Text)}' is not a word for '{name}'",
            Suggest.Hint(value.Text, shape.Words, $"write {shape.Expects}"));
        // A guess is good enough to read on with, not to draw conclusions from.
        Refused = true;
        return Suggest.Surely(value.Text, shape.Words) is { } meant ? value with { Text = meant } : new RefusedNode(value.Place);
    }

    private ScalarNode CheckOpenWord(ScalarNode value, ValueShape shape)
    {
        if (!shape.Words.Contains(value.Text, StringComparer.Ordinal))
            log.Add(ShapeCodes.UnknownCaution, value.Place, $"there is no advice for '{Shown(value.Text)}'",
                Suggest.Hint(value.Text, shape.Words, $"known are {string.Join(", ", shape.Words)}"));
        return value with { Text = OneLine(value.Text) };
    }

    private Node CheckQuantity(ScalarNode value, ValueShape shape, string name)
    {
        if (!QuantityParser.TryParse(value.Text, shape.Dimension, out var quantity, out var problem))
        {
            var comma = QuantityParser.HasDecimalComma(value.Text);
            return Refuse(value, comma ? ShapeCodes.DecimalComma : ShapeCodes.BadQuantity,
                comma ? $"'{Shown(value.Text)}' has a decimal comma" : $"'{Shown(value.Text)}' is not a quantity for '{name}'", problem);
        }
        return quantity.Value >= shape.Least ? value : OutOfRange(value, shape, name, isAbove: false);
    }

    private Node CheckNumber(ScalarNode value, ValueShape shape, string name)
    {
        if (!Scalars.TryNumber(value.Text, out var number))
        {
            return QuantityParser.HasDecimalComma(value.Text)
                ? Refuse(value, ShapeCodes.DecimalComma, $"'{Shown(value.Text)}' has a decimal comma", $"write the decimal point as a point: {Shown(value.Text.Replace(',', '.'))}")
                : Refuse(value, ShapeCodes.BadNumber, $"'{Shown(value.Text)}' is not a number", $"write a plain number without a unit, such as {name}: 4");
        }
        return number >= shape.Least && number <= shape.Most ? value : OutOfRange(value, shape, name, number > shape.Most);
    }

    private Node CheckWhole(ScalarNode value, ValueShape shape, string name)
    {
        // 31.000 is thirty-one to one writer and thirty-one thousand to another.
        if (!Scalars.TryNumber(value.Text, out var number) || value.Text.Contains('.', StringComparison.Ordinal))
        {
            return Refuse(value, ShapeCodes.BadNumber, $"'{Shown(value.Text)}' is not a whole number",
                Grouped().IsMatch(value.Text) ? $"write digits only: {name}: {string.Concat(value.Text.Where(char.IsAsciiDigit))}" : $"write digits only, such as {name}: 2");
        }
        return number >= shape.Least && number <= shape.Most ? value : OutOfRange(value, shape, name, number > shape.Most);
    }

    private RefusedNode OutOfRange(ScalarNode value, ValueShape shape, string name, bool isAbove) =>
        Refuse(value, ShapeCodes.OutOfRange, $"'{name}' cannot be {Shown(value.Text)}",
            string.Create(CultureInfo.InvariantCulture, $"write {shape.Least:0.##} or more{(isAbove || shape.Most < 1_000 ? $", up to {shape.Most:0.##}" : "")}"));

    private RefusedNode Refuse(ScalarNode value, DiagnosticCode code, string message, string hint)
    {
        Refused = true;
        log.Add(code, value.Place, message, hint);
        return new RefusedNode(value.Place);
    }

    private static string IdHint(string id)
    {
        var near = string.Join('-', id.ToLowerInvariant().Split([' ', '_', '.', '/', '-'], StringSplitOptions.RemoveEmptyEntries));
        return Id().IsMatch(near) ? $"write {near}: small letters, digits and single dashes only" : "write small letters a-z, digits and single dashes only";
    }

    private static string DateHint(string text) =>
        YearFirst().IsMatch(text) ? "the calendar has no such day; years run from 1900 to 2199" : "write the year first: 2026-02-11, 2026-02 or 2026, or unknown";

    [GeneratedRegex(@"^[a-z0-9]+(-[a-z0-9]+)*\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Id();

    [GeneratedRegex(@"^[0-9]{1,3}([ ,.'_][0-9]{3}){1,2}\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Grouped();

    [GeneratedRegex(@"^[0-9]{4}(-[0-9]{2}){0,2}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex YearFirst();
}
