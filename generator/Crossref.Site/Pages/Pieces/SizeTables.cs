using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>The deciding sizes of several parts side by side, each said to agree or to differ; what is not known stays visible.</summary>
internal sealed class SizeTables(Desk desk, CandidateViews views)
{
    // More parts of the same sizes than a reader wants to see at once.
    private const int MostBeside = 15;

    private SizeBook Sizes => desk.Fits.Sizes;

    /// <summary>The parts of which a position's page speaks, beside the listed ones; null when no size decides.</summary>
    internal SizeTable? Of(Position position, FitsAnswer answer)
    {
        var listed = desk.Fits.FactsFor(null).Listed(position);
        var rows = answer.Candidates.Select(c => (c.Part, c.Standing))
            .Concat(answer.Disputed.Select(d => (d.Part, Standing: StandingWord.Disputed)))
            .Concat(answer.RuledOut.Select(r => (r.Part, Standing: StandingWord.RuledOut)))
            .Where(r => desk.Library.Parts.ContainsKey(r.Part))
            .OrderBy(r => !listed.Contains(r.Part));
        return Table(position.Kind, rows, listed, listed.Count > 0
            ? $"Compared with {string.Join(" and ", listed.Select(desk.Wording.Part))}, which the maker lists here. "
            : "Nothing is listed here to compare with.");
    }

    /// <summary>A part beside those that may stand in for it, those that it may stand in for, and those of the same sizes; null when there are none.</summary>
    internal SizeTable? Of(Part part, WhereAnswer where)
    {
        var others = where.StandIns.Select(s => (s.Part, s.Word)).Concat(where.StandsInFor.Select(s => (Part: s.InsteadOf, s.Word)))
            .Concat(part.IsSafety ? [] : Sizes.SameAs(part.Id).Select(other => (Part: other, Word: "same sizes")))
            .Where(o => desk.Library.Parts.TryGetValue(o.Part, out var other) && other.Kind == part.Kind)
            .DistinctBy(o => o.Part, StringComparer.Ordinal).Take(MostBeside).ToList();
        return others.Count == 0 ? null : Table(
            part.Kind, others.Prepend((part.Id, "this part")), [part.Id], $"Compared with {part.CurrentNumber}. ");
    }

    private SizeTable? Table(PartKind kind, IEnumerable<(string Part, string Standing)> parts, IReadOnlyList<string> with, string caption)
    {
        var attributes = kind.Deciding;
        if (attributes.Count == 0) return null;
        var rows = parts.Select(p => new SizeRow(views.Part(p.Part), p.Standing, [.. attributes.Select(a => CellOf(kind, p.Part, a, with))])).ToList();
        if (with.Count > 0) caption += "Sizes differ when they are further apart than making and measuring allow.";
        return rows.Count == 0 ? null : new SizeTable([.. attributes.Select(SizeText.NameOf)], rows, caption);
    }

    private Cell CellOf(PartKind kind, string part, string attribute, IReadOnlyList<string> with)
    {
        if (!Sizes.Of(part).TryGetValue(attribute, out var known)) return new Cell("unknown", false);
        var found = with.Contains(part) ? [] : with.Select(other =>
            SizeBook.Compare(kind, attribute, known, Sizes.Of(other).TryGetValue(attribute, out var size) ? size : null).Agreement).ToList();
        return new Cell(desk.Sizes.Of(attribute, known.Size), true)
        {
            Word = found.Contains(Agreement.Agrees) ? "agrees" : found.Count > 0 && found.TrueForAll(a => a == Agreement.Differs) ? "differs" : "",
        };
    }
}
