using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Quantities;

namespace Crossref.Core.Sizes;

/// <summary>Sizes that are words: the same word, whoever wrote it.</summary>
public static class SizeWord
{
    /// <summary>Whether two words of an attribute mean the same.</summary>
    public static bool Same(string attribute, string one, string other) => Meaning(attribute, one) == Meaning(attribute, other);

    /// <summary>What a word of an attribute means: alike for all words that mean the same.</summary>
    public static string Meaning(string attribute, string text) => attribute switch
    {
        "shields" => Closure(text),
        // A flange is written as "none" or as its diameter.
        "flange" when Length(text) is { } length => Figure.Number((double)length, 9),
        _ => Plain(text),
    };

    // Makers write the same closure in their own letters: ZZ and 2Z.
    private static string Closure(string text) =>
        BearingTable.Marks.FirstOrDefault(m => m.Says == "closure" && m.Text == Plain(text))?.Value ?? Plain(text);

    private static string Plain(string text) => text.Trim().ToUpperInvariant();

    private static decimal? Length(string text) =>
        QuantityParser.TryParse(text.ToLowerInvariant(), Dimension.Length, out var quantity, out _) ? quantity.Value : null;
}
