using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>The deciding sizes of the parts of which a position's page speaks, side by side; what is not known stays visible.</summary>
internal sealed class SizeTables(Desk desk, CandidateViews views)
{
    internal SizeTable? Of(Position position, FitsAnswer answer)
    {
        var attributes = position.Kind.Deciding;
        if (attributes.Count == 0) return null;
        var rows = answer.Candidates.Select(c => (c.Part, c.Standing))
            .Concat(answer.Disputed.Select(d => (d.Part, Standing: StandingWords.Disputed)))
            .Concat(answer.RuledOut.Select(r => (r.Part, Standing: StandingWords.RuledOut)))
            .Where(r => desk.Library.Parts.ContainsKey(r.Part))
            .Select(r => new SizeRow(views.Part(r.Part), r.Standing, [.. attributes.Select(a => CellOf(desk.Library.Parts[r.Part], a))]))
            .ToList();
        return rows.Count == 0 ? null : new SizeTable([.. attributes.Select(SizeText.NameOf)], rows);
    }

    private Cell CellOf(Part part, string attribute) =>
        part.Sizes.TryGetValue(attribute, out var size) ? new Cell(desk.Sizes.Of(attribute, size), true) : new Cell("unknown", false);
}
