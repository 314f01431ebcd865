namespace Crossref.Site.Reading.Shapes;

/// <summary>Something that must hold between the keys of one map.</summary>
/// <param name="Kind">What is demanded.</param>
/// <param name="Keys">The keys it speaks of.</param>
internal sealed record Demand(DemandKind Kind, IReadOnlyList<string> Keys)
{
    /// <summary>The key whose presence raises the demand; null when it always stands.</summary>
    internal string? When { get; init; }
    /// <summary>The word that key must hold for it; null for any.</summary>
    internal string? Is { get; init; }
    /// <summary>The key that lifts it; null when nothing does.</summary>
    internal string? Unless { get; init; }

    /// <summary>Exactly one of the keys.</summary>
    internal static Demand ExactlyOne(params string[] keys) => new(DemandKind.ExactlyOne, keys);
    /// <summary>None or one of the keys.</summary>
    internal static Demand AtMostOne(params string[] keys) => new(DemandKind.AtMostOne, keys);
    /// <summary>At least one of the keys.</summary>
    internal static Demand AnyOf(params string[] keys) => new(DemandKind.AnyOf, keys);
}
