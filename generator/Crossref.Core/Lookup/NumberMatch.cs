namespace Crossref.Core.Lookup;

/// <summary>How a number answers what was typed.</summary>
/// <param name="Tier">See <see cref="LookupTier"/>.</param>
/// <param name="Key">The normal form that was met; for a match inside a number, its end from the match on.</param>
/// <param name="Role">What the number is to the entry.</param>
/// <param name="Form">The normal form of what was typed.</param>
/// <param name="Typed">What was typed.</param>
internal sealed record NumberMatch(int Tier, string Key, NumberRole Role, string Form, string Typed)
{
    /// <summary>Below zero when this one ranks before the other.</summary>
    public int CompareTo(NumberMatch other)
    {
        var order = other.Tier.CompareTo(Tier);
        order = order != 0 ? order : string.CompareOrdinal(Key, other.Key);
        return order != 0 ? order : Role.CompareTo(other.Role);
    }
}
