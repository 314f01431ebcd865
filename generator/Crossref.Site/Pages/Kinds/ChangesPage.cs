using System.Globalization;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;
using Crossref.Site.Sharing.Publishing;

namespace Crossref.Site.Pages.Kinds;

/// <summary>What has changed since a stick was last packed.</summary>
internal sealed class ChangesPage(Desk desk)
{
    internal IEnumerable<Sheet> All()
    {
        var path = PageMap.Overview("changes");
        var links = desk.LinksFrom(path);
        yield return new Sheet(path, "changes.html", "Changes", "What changed", Crumbs.Of(links, links.Overview("claims", "Claims")), View(links)) { Reference = "changes" };
    }

    private ChangesView View(PageLinks links)
    {
        if (desk.Options.Published is not { } before) return ChangesView.Unknown;
        var now = PublishedState.Of(desk.Library, desk.Fits.Book.Withdrawals, desk.Answers, desk.Options.Date);
        var changes = ChangesSince.Between(before, now);
        return new ChangesView
        {
            Since = changes.Since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Recorded = [.. changes.Recorded.Select(id => Recorded(id, links))],
            New = Rows(changes.New, links),
            Confirmed = Rows(changes.Confirmed, links),
            Contradicted = Rows(changes.Contradicted, links),
            Withdrawn = [.. changes.Withdrawn.Select(id => Recorded(id, links))],
        };
    }

    private Phrase Recorded(string id, PageLinks links) => desk.Library.Records.GetValueOrDefault(id) switch
    {
        Claim claim => Phrase.Of("claim ", links.Record(id), ": ", links.Part(claim.Part.Id), claim.At is { } at ? Phrase.Of(" at ", links.Position(at.Id)) : null, claim.Replaces is { } other ? Phrase.Of(" for ", links.Part(other.Id)) : null),
        Repair repair => Phrase.Of("repair ", links.Record(id), repair.Machine is { } machine ? Phrase.Of(" on ", links.Machine(machine.Id)) : null),
        Question => Phrase.Of("question: ", links.Record(id)),
        _ => Phrase.Of(id),
    };

    private IReadOnlyList<ChangeRow> Rows(IEnumerable<StandingChange> changes, PageLinks links)
    {
        var parts = new CandidateViews(desk, links);
        return [.. changes.Select(c => new ChangeRow(
            desk.Library.Parts.ContainsKey(c.Part) ? parts.Part(c.Part) : new PartLine(new Link(null, c.Part), "", null),
            links.Position(c.Position),
            desk.Library.Positions.TryGetValue(c.Position, out var position) ? links.Family(position.Family) : null, c.Before, c.Now))];
    }
}
