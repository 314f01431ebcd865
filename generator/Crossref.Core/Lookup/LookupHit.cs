namespace Crossref.Core.Lookup;

/// <summary>An entry that was found.</summary>
/// <param name="Type">The entry's type.</param>
/// <param name="Id">The entry's identifier.</param>
/// <param name="Title">The entry's name.</param>
/// <param name="Why">A sentence that says what matched.</param>
/// <param name="Score">Rank as a whole number, best highest; see <see cref="LookupTier"/>.</param>
/// <param name="Page">The entry's page, relative to the root of the site.</param>
/// <param name="Detail">The line under the title; empty when there is none.</param>
/// <param name="Kind">The kind of part; null when there is none.</param>
/// <param name="Families">The families the entry belongs to.</param>
/// <param name="Standing">The standing as a word; null when there is none.</param>
public sealed record LookupHit(
    string Type,
    string Id,
    string Title,
    string Why,
    int Score,
    string Page,
    string Detail,
    string? Kind,
    IReadOnlyList<string> Families,
    string? Standing)
{
    /// <summary>Whether a whole number or identifier was typed, so that the page may be opened at once.</summary>
    public bool IsExact => LookupTier.Of(Score) >= LookupTier.Exact;
}
