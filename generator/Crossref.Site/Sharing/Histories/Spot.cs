namespace Crossref.Site.Sharing.Histories;

/// <summary>Where a key stands among its neighbours.</summary>
/// <param name="Age">How many states were known when it was put there; of two keys behind the same one, the later is nearer.</param>
/// <param name="After">The key that it stands behind; empty for the first.</param>
internal sealed record Spot(int Age, string After)
{
    /// <summary>The later of two; the order in which they come makes no difference.</summary>
    internal static Spot Later(Spot one, Spot other) =>
        one.Age != other.Age ? one.Age > other.Age ? one : other : string.CompareOrdinal(one.After, other.After) >= 0 ? one : other;
}
