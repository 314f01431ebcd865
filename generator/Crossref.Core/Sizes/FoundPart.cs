namespace Crossref.Core.Sizes;

/// <summary>A part on record that may be the one somebody holds.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Sizes">The sizes in question: what is held first, what is on record second; none of them differs.</param>
public sealed record FoundPart(string Part, IReadOnlyList<SizeComparison> Sizes)
{
    /// <summary>Attributes that agree.</summary>
    public IEnumerable<string> Agreeing => Sizes.Where(s => s.Agreement == Agreement.Agrees).Select(s => s.Attribute);

    /// <summary>Attributes of which nothing is on record, or that are in doubt themselves.</summary>
    public IEnumerable<string> Unknown => Sizes.Where(s => s.Agreement == Agreement.Unknown).Select(s => s.Attribute);
}
