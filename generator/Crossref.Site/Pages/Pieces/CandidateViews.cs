using System.Globalization;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Drawing;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Puts candidates, refusals and stock into the form that pages show, for one page.</summary>
internal sealed class CandidateViews(Desk desk, PageLinks links)
{
    internal PartLine Part(string id) => new(
        links.Part(id), desk.Library.Parts.GetValueOrDefault(id)?.Name ?? "", desk.Library.Parts.GetValueOrDefault(id)?.Maker);

    internal CandidateView Of(Candidate candidate, bool safetyPlace)
    {
        var stock = Stock(candidate.Part);
        return new CandidateView
        {
            Part = Part(candidate.Part),
            Standing = StandingWords.Of(links, candidate),
            Reason = candidate.Reason,
            Stock = stock,
            InHouse = Usable(stock),
            Order = OrderTerms(desk.Library.Parts.GetValueOrDefault(candidate.Part)),
            CheckFirst = candidate.Conditions,
            Changes = candidate.Changes,
            Path = [.. candidate.Steps.Select(Step)],
            Figure = PathFigure.Of(desk.Library, candidate),
            WhyNot = candidate.Accepted || candidate.IsLead ? null : WhyNot(candidate, safetyPlace),
        };
    }

    internal RefusalView Of(Refusal refusal, bool disputed) => new(
        Part(refusal.Part),
        StandingWords.OfRefusal(links, disputed),
        refusal.Reason,
        Stock(refusal.Part));

    /// <summary>Where pieces of a part lie.</summary>
    internal IReadOnlyList<StockLine> Stock(string part) =>
    [
        .. desk.Fits.House.Of(part).Select(item => new StockLine(
            links.Record(item.Id), HolderWord(item.Holder), item.Quantity, item.Grade is { } grade ? GradeText(grade) : null, item.Bin,
            IsUsable(item.Grade), item.Holder == RecordType.Unit && desk.Library.Units.GetValueOrDefault(item.Id) is { BackInService: true })),
    ];

    /// <summary>How many can be fitted and where they lie, in a few words: "2 (B4, unit in rack 2)".</summary>
    internal string StockText(string part)
    {
        var usable = desk.Fits.House.Of(part).Where(i => IsUsable(i.Grade)).ToList();
        var places = usable.Select(i => i.Holder == RecordType.Unit ? "unit in " + (i.Bin ?? i.Id) : i.Bin ?? i.Id).Distinct(StringComparer.Ordinal);
        return usable.Count == 0 ? "none" : $"{usable.Sum(i => i.Quantity)} ({string.Join(", ", places)})";
    }

    internal static int Usable(IEnumerable<StockLine> stock) => stock.Where(s => s.Usable).Sum(s => s.Quantity);

    /// <summary>How many pieces of a part can be fitted.</summary>
    internal int InHouse(string part) => desk.Fits.House.Of(part).Where(i => IsUsable(i.Grade)).Sum(i => i.Quantity);

    internal static bool IsUsable(Grade? grade) => grade is not (Grade.Core or Grade.Sample);

    /// <summary>What has to be checked first and what has to be done to the part, in one line; empty for nothing.</summary>
    internal static string Caveats(Candidate candidate) =>
        string.Join("; ", candidate.Conditions.Concat(candidate.Changes.Select(change => "with a change: " + change)));

    /// <summary>The same behind a line of text; null for nothing.</summary>
    internal static string? Warning(Candidate candidate) => Caveats(candidate) is not { Length: > 0 } caveats ? null
        : candidate.Conditions.Count > 0 ? "; check first: " + caveats : "; " + caveats;

    /// <summary>The word for one part of a kind.</summary>
    internal static string KindWord(PartKind kind) => kind == PartKind.Other ? "part" : kind.Name == "cutout" ? "cut-out" : kind.Name;

    internal static string GradeText(Grade grade) => Words.Of(grade).Replace('-', ' ');

    internal static string? OrderTerms(Part? part) => (part?.Price, part?.LeadDays) switch
    {
        ({ } price, { } days) => $"about {Days(days)}, price {Number(price)}",
        ({ } price, null) => $"price {Number(price)}, how long it takes is not on record",
        (null, { } days) => $"about {Days(days)}",
        _ => null,
    };

    internal static string Days(decimal days) => days == 1 ? "1 day" : Number(days) + " days";

    internal static string Number(decimal value) => value.ToString("#,0.##", CultureInfo.InvariantCulture);

    private static string HolderWord(RecordType holder) => holder switch
    {
        RecordType.Bag => "bag",
        RecordType.Order => "delivered order",
        _ => "idle unit",
    };

    private Phrase Step(PathStep step) => Phrase.Of([.. Opening(step), .. Behind(step)]);

    private IEnumerable<object?> Opening(PathStep step) => step.Kind switch
    {
        StepKind.Listed => ["The maker's list names ", links.Part(step.To), " here"],
        StepKind.Claim => [links.Part(step.To), " was put in here"],
        StepKind.Substitution => [links.Part(step.To), " may stand in for ", links.Part(step.From)],
        StepKind.Superseded => ["The maker now sends ", links.Part(step.To), " instead of ", links.Part(step.From)],
        StepKind.SameSize => [links.Part(step.To), " and ", links.Part(step.From), " agree in every size that decides (", SizesOf(step.To), ")"],
        _ => [links.Part(step.To), " and ", links.Part(step.From), " both stand at ", links.Position(step.Via!)],
    };

    private string SizesOf(string part) => string.Join(", ", desk.Library.Parts[part].Kind.Deciding.Select(attribute =>
        $"{SizeText.NameOf(attribute)} {desk.Sizes.Of(attribute, desk.Fits.Sizes.Of(part)[attribute].Size)}"));

    private IEnumerable<object?> Behind(PathStep step)
    {
        yield return ": ";
        yield return StandingWords.Link(links, Words.Of(step.Standing), "stands");
        if (step.Source is { } source)
        {
            yield return ", ";
            yield return links.Record(source);
            if (step.Locator is { } locator) yield return ", " + locator;
        }
        var claims = step.Claims.Where(desk.Library.Claims.ContainsKey).ToList();
        if (claims.Count == 0) yield break;
        yield return claims.Count == 1 ? "; claim " : "; claims ";
        for (var i = 0; i < claims.Count; i++)
        {
            if (i > 0) yield return ", ";
            yield return links.Record(claims[i]);
        }
    }

    private string WhyNot(Candidate candidate, bool safetyPlace)
    {
        var safety = safetyPlace || candidate.Steps.Any(s => desk.Library.Parts.GetValueOrDefault(s.To) is { IsSafety: true });
        if (!safety) return $"It is {candidate.Standing}; an answer here must be {Words.Of(desk.Library.Card.AcceptFrom)} or better.";
        return candidate.Weakest == Basis.Documented
            ? "The maker's document names it for some machines only. It is an answer for a machine of which that is known."
            : "A matter of safety: only the maker's document counts, and it does not name this part here.";
    }
}
