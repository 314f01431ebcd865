namespace Crossref.Core.Lookup;

/// <summary>
/// The steps of the ranking. A score is the tier times <see cref="Step"/> plus what the words add,
/// so that no number of words lifts a hit over a better tier.
/// </summary>
public static class LookupTier
{
    /// <summary>The distance between two tiers in a score.</summary>
    public const int Step = 100_000;

    /// <summary>Only words matched.</summary>
    public const int Words = 1;

    /// <summary>A number differs by one slip of the keys.</summary>
    public const int Typo = 2;

    /// <summary>A number contains what was typed.</summary>
    public const int Middle = 3;

    /// <summary>A number starts with what was typed.</summary>
    public const int Prefix = 4;

    /// <summary>The lowest tier in which a whole number was typed.</summary>
    public const int Exact = 5;

    /// <summary>The tier of a number typed whole: 5 for an identifier up to 9 for a current number.</summary>
    public static int ExactFor(NumberRole role) => Exact + (int)NumberRole.Id - (int)role;

    /// <summary>The tier of a score.</summary>
    public static int Of(int score) => score / Step;
}
