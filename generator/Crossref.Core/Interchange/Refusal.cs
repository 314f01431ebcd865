namespace Crossref.Core.Interchange;

/// <summary>A part that is disputed or ruled out at a position, and why.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Reason">Why, in plain sentences.</param>
/// <param name="Claims">Ids of the statements on both sides, the deciding ones first.</param>
public sealed record Refusal(string Part, string Reason, IReadOnlyList<string> Claims)
{
    /// <summary>Attributes that must match and differ from what is listed, whatever was said.</summary>
    public IReadOnlyList<string> Sizes { get; init; } = [];
}
