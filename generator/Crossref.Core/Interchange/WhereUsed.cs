using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>Answers where a part fits, over every position of a library and without a machine.</summary>
public sealed class WhereUsed
{
    private readonly Library _library;
    private readonly Fits _fits;
    private readonly Wording _wording;
    private readonly ILookup<string, WhereFit> _candidates;
    private readonly ILookup<string, WhereRefusal> _refusals;
    private readonly ILookup<string, Part> _superseded;

    /// <summary>Answers every position once, or takes the answers that are known already.</summary>
    public WhereUsed(Library library, Fits fits, IReadOnlyList<FitsAnswer>? answers = null)
    {
        _library = library;
        _fits = fits;
        _wording = new Wording(library);
        answers ??= [.. library.Positions.Keys.Order(StringComparer.Ordinal).Select(p => fits.At(p))];
        _candidates = answers.SelectMany(a => a.Candidates.Select(c => new WhereFit(a.Position, c))).ToLookup(f => f.Candidate.Part, StringComparer.Ordinal);
        _refusals = answers.SelectMany(a =>
                a.Disputed.Select(d => new WhereRefusal(a.Position, true, d)).Concat(a.RuledOut.Select(r => new WhereRefusal(a.Position, false, r))))
            .ToLookup(r => r.Refusal.Part, StringComparer.Ordinal);
        _superseded = library.Parts.Values.Where(p => p is { Retired: false, SupersededBy: not null })
            .OrderBy(p => p.Id, StringComparer.Ordinal).ToLookup(p => p.SupersededBy!.Value.Id, StringComparer.Ordinal);
    }

    /// <summary>Where a part fits.</summary>
    public WhereAnswer Of(string part) => new(
        part,
        [.. _candidates[part].OrderBy(f => f.Candidate.IsLead).ThenByDescending(f => f.Candidate.Weakest).ThenBy(f => f.Position, StringComparer.Ordinal)],
        [.. _refusals[part].OrderBy(r => r.Position, StringComparer.Ordinal)],
        [.. Comparisons(_fits.Book.SubstitutesFor(part).Select(other => (other, part))), .. Supersession(part)],
        [.. Comparisons(_fits.Book.SubstitutedBy(part).Select(other => (part, other))), .. Superseded(part)]);

    private IEnumerable<StandIn> Comparisons(IEnumerable<(string Part, string InsteadOf)> pairs) =>
        from pair in pairs
        from place in _fits.Book.Comparisons(pair.Part, pair.InsteadOf).Select(s => s.Where).Distinct(StringComparer.Ordinal).OrderBy(w => w, StringComparer.Ordinal)
        let said = _fits.FactsFor(null).SubstitutionIn(pair.Part, pair.InsteadOf, place)
        where said.State != FactState.Nothing
        // A size that must match has the last word.
        let differing = _fits.Sizes.Mismatches(pair.Part, [pair.InsteadOf])
        let fact = differing.Count > 0 ? said with { State = FactState.RuledOut } : said
        let reverse = _fits.FactsFor(null).SubstitutionIn(pair.InsteadOf, pair.Part, place)
        select new StandIn(pair.Part, pair.InsteadOf, place, fact, Word(fact, reverse), differing.Count > 0 ? $"Does not fit, whatever anyone claims: {_wording.OfMismatch(_fits.Sizes, differing, pair.Part, [pair.InsteadOf])}." : _wording.Of(fact));

    private IEnumerable<StandIn> Supersession(string part) =>
        _library.Parts[part].SupersededBy is { } next ? [Superseding(next.Id, _library.Parts[part])] : [];

    private IEnumerable<StandIn> Superseded(string part) => _superseded[part].Select(p => Superseding(part, p));

    private StandIn Superseding(string next, Part before) => new(
        next, before.Id, null, Fact.Nothing, "replacement",
        $"The maker sends {_wording.Part(next)} instead of {_wording.Part(before.Id)}" +
        (before.Source is { } source && _library.Sources.GetValueOrDefault(source.Id) is { } record ? $" ({record.Title})." : "."));

    private static string Word(Fact fact, Fact reverse) => fact.State switch
    {
        FactState.Disputed => StandingWord.Disputed,
        FactState.RuledOut => StandingWord.RuledOut,
        _ => Plain(fact) && Plain(reverse) ? "interchangeable" : "substitute",
    };

    private static bool Plain(Fact fact) =>
        fact.State == FactState.Stands && fact.Leading!.Change is null && fact.CheckFirst.Count == 0 && fact.Exceptions.Count == 0;
}
