using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Quantities;

namespace Crossref.Core.Sizes;

/// <summary>Sizes that are words: the same word, whoever wrote it.</summary>
public static class SizeWord
{
    /// <summary>Whether two words of an attribute mean the same.</summary>
    public static bool Same(string attribute, string one, string other) => attribute switch
    {
        "shields" => Closure(one) == Closure(other),
        // A flange is written as "none" or as its diameter.
        "flange" when Length(one) is { } a && Length(other) is { } b => a == b,
        _ => Plain(one) == Plain(other),
    };

    // Makers write the same closure in their own letters: ZZ and 2Z.
    private static string Closure(string text) =>
        BearingTable.Marks.FirstOrDefault(m => m.Says == "closure" && m.Text == Plain(text))?.Value ?? Plain(text);

    private static string Plain(string text) => text.Trim().ToUpperInvariant();

    private static decimal? Length(string text) =>
        QuantityParser.TryParse(text, Dimension.Length, out var quantity, out _) ? quantity.Value : null;
}
