using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Puts statements into the form that pages show, for one page.</summary>
internal sealed class EvidenceViews(Desk desk, PageLinks links)
{
    private readonly CandidateViews _parts = new(desk, links);
    private readonly SplitFinder _splits = new(desk.Library);

    /// <summary>Everything said about a position: part by part, then every comparison that a path there goes over.</summary>
    internal IReadOnlyList<EvidenceView> At(FitsAnswer answer)
    {
        var position = desk.Library.Positions[answer.Position];
        var facts = desk.Fits.FactsFor(null);
        var withdrawn = desk.Index.ClaimsAt(answer.Position).Where(IsWithdrawn).ToLookup(c => c.Part.Id, StringComparer.Ordinal);
        var order = answer.Candidates.Select(c => c.Part).Concat(answer.Disputed.Select(d => d.Part)).Concat(answer.RuledOut.Select(r => r.Part)).ToList();
        var direct = desk.Fits.Book.PartsAt(answer.Position).Concat(withdrawn.Select(g => g.Key)).Distinct(StringComparer.Ordinal)
            .OrderBy(p => order.IndexOf(p) is var at and >= 0 ? at : int.MaxValue)
            .Select(part => Of(part, Phrase.Of("in this place"), facts.Direct(part, position), withdrawn[part]));
        var compared = answer.Candidates.SelectMany(c => c.Steps).Where(s => s.Kind == StepKind.Substitution)
            .Select(s => (s.To, s.From)).Distinct()
            .Select(pair => Compared(pair.To, pair.From, facts.Substitution(pair.To, pair.From, position)));
        return [.. direct, .. compared];
    }

    /// <summary>One part in place of another.</summary>
    internal EvidenceView Compared(string part, string insteadOf, Fact fact) => Of(
        part, Phrase.Of("in place of ", links.Part(insteadOf)), fact,
        desk.Index.ClaimsOf(part).Where(c => c.Part.Id == part && c.Replaces?.Id == insteadOf && IsWithdrawn(c)));

    private EvidenceView Of(string part, Phrase about, Fact fact, IEnumerable<Claim> withdrawn) => new()
    {
        Part = _parts.Part(part),
        About = about,
        For = [.. fact.Positives.Select(s => Of(s))],
        Against = [.. fact.Negatives.Select(s => Of(s)), .. fact.Exceptions.Select(s => Of(s, "Counts for the machines it names, not for every one."))],
        Withdrawn = [.. withdrawn.Select(Of)],
        Splits = _splits.Find(fact.Positives, fact.Negatives),
        Contradicted = fact.Positives.Count > 0 && fact.Negatives.Count > 0,
    };

    internal StatementView Of(Statement s, string? aside = null)
    {
        var claim = desk.Library.Claims.GetValueOrDefault(s.Id);
        return new StatementView
        {
            Says = Says(s.Verdict),
            Basis = StandingWords.Link(links, Words.Of(s.Basis), "stands"),
            Record = Behind(s, claim),
            Lowered = s.Lowered,
            Source = s.Source is { } source && s.Kind is not StatementKind.Repair ? links.Record(source) : null,
            Locator = s.Locator,
            By = s.By,
            Date = s.Date.IsUnknown ? null : s.Date.ToString(),
            Run = s.Run?.ToString(),
            Machine = s.Machine is { } machine ? links.Machine(machine) : null,
            OnlyIf = s.Terms.Count == 0 ? null : string.Join(", ", s.Terms),
            Change = s.Change,
            Neighbours = Neighbours(s.NeighboursDamaged),
            Failure = s.Failure,
            Note = claim?.Note,
            Aside = aside,
        };
    }

    /// <summary>A claim as it is written, whether or not it counts.</summary>
    internal StatementView Of(Claim claim) => new()
    {
        Says = claim.Verdict is { } verdict ? Says(verdict) : "takes back",
        Basis = claim.Basis is { } basis ? StandingWords.Link(links, Words.Of(basis), "stands") : new Link(null, "no verdict"),
        Record = links.Record(claim.Id),
        Source = claim.Source is { } source ? links.Record(source.Id) : null,
        Locator = claim.Locator,
        By = claim.By,
        Date = claim.Date.IsUnknown ? null : claim.Date.ToString(),
        Run = claim.Run?.ToString(),
        Machine = claim.Machine is { } machine ? links.Machine(machine.Id) : null,
        OnlyIf = Term.Of(claim.OnlyIf) is { Count: > 0 } terms ? string.Join(", ", terms) : null,
        Change = claim.Change,
        Neighbours = Neighbours(claim.NeighboursDamaged),
        Note = claim.Note,
        Struck = IsWithdrawn(claim),
        Aside = WithdrawnWhy(claim),
    };

    internal bool IsWithdrawn(Claim claim) => !desk.Fits.Book.Withdrawals.Stands(claim.Id);

    /// <summary>Who took a claim back, when and why; null for one that stands.</summary>
    internal string? WithdrawnWhy(Claim claim)
    {
        if (!IsWithdrawn(claim)) return claim.Retired ? "Retired." : null;
        var by = desk.Fits.Book.Withdrawals.WithdrawnBy(claim.Id)
            .Where(desk.Fits.Book.Withdrawals.Stands).Select(id => desk.Library.Claims.GetValueOrDefault(id)).FirstOrDefault(c => c is not null);
        if (by is null) return "Taken back.";
        var who = by.By is { } name ? " by " + name : "";
        var when = by.Date.IsUnknown ? "" : " on " + by.Date;
        return $"Taken back{who}{when}{(by.Note is { } note ? ": " + note : ".")}";
    }

    internal static string Says(Verdict verdict) => Words.Of(verdict).Replace('-', ' ');

    private static string? Neighbours(bool? damaged) => damaged switch
    {
        true => "neighbours damaged",
        false => "neighbours undamaged",
        null => null,
    };

    private Link Behind(Statement s, Claim? claim) => s.Kind switch
    {
        StatementKind.Listing => new Link(null, "the maker's list"),
        StatementKind.Repair when s.Source is { } repair => links.Record(repair),
        StatementKind.Reverse => links.Record(s.Id) with { Text = s.Id + ", read the other way round" },
        _ => claim is null ? new Link(null, s.Id) : links.Record(claim.Id),
    };
}
