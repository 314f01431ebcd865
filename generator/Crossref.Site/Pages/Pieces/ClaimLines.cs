using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Claims in a list, each with what it counts for.</summary>
internal sealed class ClaimLines(Desk desk, PageLinks links)
{
    private readonly CandidateViews _parts = new(desk, links);
    private readonly EvidenceViews _evidence = new(desk, links);

    internal ClaimLine Of(Claim claim)
    {
        var said = Said(claim);
        var counts = said.FirstOrDefault(s => s.Id == claim.Id && s.Kind == StatementKind.Claim);
        return new ClaimLine
        {
            Claim = links.Record(claim.Id),
            Anchor = PageMap.Anchor(claim.Id),
            Part = _parts.Part(claim.Part.Id),
            About = About(claim),
            Statement = counts is null ? _evidence.Of(claim) : _evidence.Of(counts),
            Orientation = OrientationText.Of(claim.Orientation),
            Pictures = desk.PicturesFor(links, claim.Pictures),
            Withdraws = claim.Withdraws is { } other ? links.Record(other.Id) : null,
            Contradicted = counts is not null && said.Any(s => s.IsPositive != counts.IsPositive),
        };
    }

    /// <summary>Where a part was tried, or in place of what.</summary>
    internal Phrase About(Claim claim) => claim switch
    {
        { At: { } at } => Phrase.Of("at ", links.Position(at.Id), In(at.Id)),
        { Replaces: { } other } => Phrase.Of("in place of ", links.Part(other.Id), claim.BothWays ? " and the other way round" : null, Where(claim)),
        _ => Phrase.Of("about nothing"),
    };

    private string? In(string address) =>
        desk.Library.Positions.TryGetValue(address, out var position) && desk.Library.Families.TryGetValue(position.Family, out var family)
            ? ", " + family.Name
            : null;

    private Phrase? Where(Claim claim) => claim.Where is { } where ? Phrase.Of(", in ", links.Record(where.Id)) : null;

    // Everything that counts about the same thing.
    private IReadOnlyList<Statement> Said(Claim claim) => claim switch
    {
        { At: { } at } => desk.Fits.Book.Direct(claim.Part.Id, at.Id),
        { Replaces: { } other } => desk.Fits.Book.Comparisons(claim.Part.Id, other.Id),
        _ => [],
    };
}
