using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Site.Sheets;

/// <summary>One column of a sheet and the key of the record behind it.</summary>
/// <param name="Key">The key, or the name of a size.</param>
/// <param name="Title">The column's heading.</param>
/// <param name="Write">What a record says there; null or empty for nothing.</param>
internal sealed record SheetField(string Key, string Title, Func<IRecord, string?> Write)
{
    /// <summary>Other headings that people give the column.</summary>
    internal IReadOnlyList<string> Synonyms { get; init; } = [];
    /// <summary>Whether a spreadsheet may take its values for numbers.</summary>
    internal bool IsFigure { get; init; }
    /// <summary>Whether it is a size of a part.</summary>
    internal bool IsSize { get; init; }

    internal static SheetField Of<T>(string key, string title, Func<T, string?> write, params string[] synonyms) where T : IRecord =>
        new(key, title, r => write((T)r)) { Synonyms = synonyms };

    internal static SheetField Figure<T>(string key, string title, Func<T, string?> write, params string[] synonyms) where T : IRecord =>
        Of(key, title, write, synonyms) with { IsFigure = true };

    /// <summary>The cell for a record.</summary>
    internal string Cell(IRecord record) => Write(record) is not { Length: > 0 } text ? "" : IsFigure ? CellText.WriteFigure(text) : CellText.Write(text);

    /// <summary>Whether two records say the same there.</summary>
    internal bool IsSame(IRecord one, IRecord other) => IsSize && one is Part p && other is Part q
        ? Measure(p) == Measure(q)
        : (Write(one) ?? "") == (Write(other) ?? "");

    private (Quantity? Quantity, string? Word) Measure(Part part) =>
        part.Sizes.GetValueOrDefault(Key) is not { } size ? (null, null) : size.Quantity is { } quantity ? (quantity, null) : (null, size.Text);
}
