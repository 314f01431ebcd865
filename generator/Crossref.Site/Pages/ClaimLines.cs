using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>Claims in a list, as they are written.</summary>
internal sealed class ClaimLines(Desk desk, PageLinks links)
{
    private readonly CandidateViews _parts = new(desk, links);
    private readonly EvidenceViews _evidence = new(desk, links);

    internal ClaimLine Of(Claim claim) => new()
    {
        Claim = links.Record(claim.Id),
        Anchor = PageMap.Anchor(claim.Id),
        Part = _parts.Part(claim.Part.Id),
        About = About(claim),
        Statement = _evidence.Of(claim),
        Pictures = desk.PicturesFor(links, claim.Pictures),
        Withdraws = claim.Withdraws is { } other ? links.Record(other.Id) : null,
        Contradicted = IsContradicted(claim),
    };

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

    private bool IsContradicted(Claim claim)
    {
        if (claim.Verdict is not { } verdict || _evidence.IsWithdrawn(claim)) return false;
        var yes = verdict != Verdict.DoesNotFit;
        var book = desk.Fits.Book;
        var about = claim.At is { } at ? book.Direct(claim.Part.Id, at.Id) : claim.Replaces is { } other ? book.Comparisons(claim.Part.Id, other.Id) : [];
        return about.Any(s => s.IsPositive != yes);
    }
}
