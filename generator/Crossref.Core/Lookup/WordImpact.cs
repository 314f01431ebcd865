namespace Crossref.Core.Lookup;

/// <summary>
/// What a word adds to the score of an entry, in the manner of BM25 (Robertson and Zaragoza, "The Probabilistic
/// Relevance Framework: BM25 and Beyond", 2009): rare words weigh more, repetition tells less and less, and a word
/// in a short text tells more than in a long one. Whole numbers throughout, fixed when the index is built, so that
/// every machine and both readers rank alike.
/// </summary>
internal static class WordImpact
{
    /// <summary>
    /// The share of the field, without regard to rarity: its base (name 100, alias 60, text 20) and up to 29 more.
    /// The steps between the bases are wider than that, so a name always beats an alias and an alias a text.
    /// </summary>
    /// <param name="field">0 name, 1 alias, 2 text.</param>
    /// <param name="times">How often the word stands in the field, at least 1.</param>
    /// <param name="length">The words in the field.</param>
    /// <param name="averageSixteenths">The words in this field of all entries on average, times 16.</param>
    public static int Level(int field, int times, int length, int averageSixteenths)
    {
        // times / (times + 1.2 × (0.25 + 0.75 × length / average)), multiplied out by 20 × average.
        var told = 20L * times * averageSixteenths;
        var doubt = (6L * averageSixteenths) + (18L * 16 * length);
        var start = field switch { 0 => 100, 1 => 60, _ => 20 };
        return start + (int)(29 * told / (told + doubt));
    }

    /// <summary>How rare a word is: log2((entries + 1) / (having + 1/2)) in sixteenths, plus one whole.</summary>
    public static int Rarity(int entries, int having) => 16 + LogSixteenths((2L * entries) + 2, (2L * having) + 1);

    /// <summary>The impact of a word on an entry: 1 to about 3000.</summary>
    public static int Of(int level, int rarity) => Math.Max(1, level * rarity / 16);

    /// <summary>The impact of a word that was only begun: less, the more of it is missing.</summary>
    public static int Begun(int impact, int typed, int whole) => Math.Max(1, impact * typed / whole);

    // The logarithm to base 2 of a quotient of at least 1, by squaring: the platform's floating
    // logarithm may differ in its last bit from one machine to the next.
    private static int LogSixteenths(long above, long below)
    {
        var mantissa = (ulong)(above << 30) / (ulong)below;
        var log = 0;
        for (; mantissa >= 1UL << 31; mantissa >>= 1)
        {
            log += 16;
        }

        for (var bit = 8; bit > 0; bit >>= 1)
        {
            mantissa = (mantissa * mantissa) >> 30;
            if (mantissa >= 1UL << 31)
            {
                mantissa >>= 1;
                log += bit;
            }
        }

        return log;
    }
}
