using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Interchange;

/// <summary>
/// Finds, for one position, the best path of evidence to every part. Paths grow step by step; one that another
/// <see cref="Path.Dominates">dominates</see> is forgotten, which keeps large groups of interchangeable parts small.
/// </summary>
internal sealed class PathSearch(Library library, StatementBook book, SizeBook sizes, Facts facts, Position position)
{
    // Steps that may follow the first; supersessions do not count. Longer chains of hearsay prove nothing.
    private const int MostSteps = 3;

    private readonly Dictionary<string, List<Path>> _kept = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _mismatched = new(StringComparer.Ordinal);
    private readonly Queue<Path> _open = new();
    private readonly bool _safety = library.IsSafety(position);

    /// <summary>Parts that a path came to but whose sizes rule them out, in order of id; known after <see cref="Run"/>.</summary>
    internal IReadOnlyCollection<string> Mismatched => _mismatched;

    /// <summary>The best path to each part that can be reached, in no particular order.</summary>
    internal IReadOnlyList<Path> Run()
    {
        foreach (var part in book.PartsAt(position.Address))
        {
            var fact = facts.Direct(part, position);
            if (fact.State != FactState.Stands) continue;
            var kind = fact.Leading!.Kind == StatementKind.Listing ? StepKind.Listed : StepKind.Claim;
            Keep(Path.Extend(null, ToStep(kind, position.Address, part, fact), fact, _safety || IsSafety(part)));
        }
        while (_open.TryDequeue(out var path))
        {
            if (!_kept[path.Part].Contains(path)) continue;
            foreach (var longer in Substitutions(path)) Keep(longer);
            if (Supersession(path) is { } next) Keep(next);
        }
        var answers = _kept.Values.SelectMany(paths => paths).ToList();
        var leads = answers.SelectMany(path => SamePosition(path).Concat(SameSize(path))).Where(path => !IsMismatched(path.Part));
        return
        [
            .. answers.Concat(leads).GroupBy(p => p.Part, StringComparer.Ordinal)
                .Select(group => WithExceptions(group.Aggregate((best, path) => path.CompareTo(best) < 0 ? path : best))),
        ];
    }

    // A no for some machines, said of this very position, is shown however the part was reached.
    private Path WithExceptions(Path path) => path with
    {
        Shown = [.. path.Shown, .. path.Parts.Skip(1).SelectMany(part => Wording.ExceptionsOf(facts.Direct(part, position)))],
    };

    private IEnumerable<Path> Substitutions(Path path)
    {
        if (path.Counted == MostSteps) yield break;
        foreach (var part in book.SubstitutesFor(path.Part))
        {
            if (!MayReach(path, part)) continue;
            var fact = facts.Substitution(part, path.Part, position);
            if (fact.State != FactState.Stands || Excluded(path, fact)) continue;
            var longer = Path.Extend(path, ToStep(StepKind.Substitution, path.Part, part, fact), fact, IsSafety(part));
            if (!longer.Safety || !longer.IsLead) yield return longer;
        }
    }

    private Path? Supersession(Path path)
    {
        var before = library.Parts[path.Part];
        if (before.SupersededBy?.Id is not { } part || !MayReach(path, part)) return null;
        var standing = library.Documents(before.Source) ? Basis.Documented : Basis.Told;
        var step = new PathStep(StepKind.Superseded, path.Part, part, standing, [], before.Source?.Id, null);
        var longer = Path.Extend(path, step, null, IsSafety(part));
        return longer is { Safety: true, IsLead: true } ? null : longer;
    }

    // Both parts stand at another position. Several positions may show it; the one where the weaker part is strongest counts.
    private IEnumerable<Path> SamePosition(Path path)
    {
        if (path.Safety || path.Counted == MostSteps) return [];
        var best = new Dictionary<string, PathStep>(StringComparer.Ordinal);
        foreach (var address in book.PositionsOf(path.Part))
        {
            var other = library.Positions[address];
            if (address == position.Address || StandsMeasured(path.Part, other) is not { } here) continue;
            foreach (var part in book.PartsAt(address))
            {
                if (library.Parts[part].Kind != library.Parts[path.Part].Kind || IsSafety(part) || !MayReach(path, part)) continue;
                if (StandsMeasured(part, other) is not { } there) continue;
                var standing = here < there ? here : there;
                if (best.TryGetValue(part, out var known) && known.Standing >= standing) continue;
                var fact = facts.Direct(part, other);
                best[part] = ToStep(StepKind.SamePosition, path.Part, part, fact) with { Standing = standing, Via = address };
            }
        }
        return best.Values.Select(step => Path.Extend(path, step, null, safety: false) with { Shown = ShownAt(step) });
    }

    private IEnumerable<Path> SameSize(Path path) =>
        path.Safety || path.Counted == MostSteps ? [] :
        from part in sizes.SameAs(path.Part)
        where !IsSafety(part) && MayReach(path, part)
        select Path.Extend(path, new PathStep(StepKind.SameSize, path.Part, part, Basis.Measured, [], null, null), null, safety: false);

    private IReadOnlyList<string> ShownAt(PathStep step)
    {
        var other = library.Positions[step.Via!];
        return [.. About(facts.Direct(step.From, other)).Union(About(facts.Direct(step.To, other))).Select(text => $"at {step.Via}: {text}")];

        static IEnumerable<string> About(Fact fact) => fact.Leading!.Change is { } change ? Wording.ConditionsOf(fact).Append(change) : Wording.ConditionsOf(fact);
    }

    private Basis? StandsMeasured(string part, Position other) =>
        facts.Direct(part, other).Standing is { } standing and >= Basis.Measured ? standing : null;

    private void Keep(Path path)
    {
        if (IsMismatched(path.Part)) return;
        if (!_kept.TryGetValue(path.Part, out var paths)) _kept[path.Part] = paths = [];
        if (paths.Exists(p => p.Dominates(path))) return;
        paths.RemoveAll(path.Dominates);
        paths.Add(path);
        _open.Enqueue(path);
    }

    // A part that cannot go in by its sizes is ruled out, whatever anyone claims, and carries no path on.
    private bool IsMismatched(string part)
    {
        if (sizes.Mismatches(part, facts.Listed(position)).Count == 0) return false;
        _mismatched.Add(part);
        return true;
    }

    // No part twice; a part that is ruled out or disputed here is just that, and carries no path on.
    private bool MayReach(Path path, string part) =>
        !path.Parts.Contains(part, StringComparer.Ordinal) &&
        library.Parts.GetValueOrDefault(part) is { Retired: false } &&
        facts.Direct(part, position).State is FactState.Nothing or FactState.Stands;

    private static bool Excluded(Path path, Fact fact) => fact.Leading!.Terms.Any(t => path.Terms.Any(t.Excludes));

    private bool IsSafety(string part) => library.Parts[part].IsSafety;

    private static PathStep ToStep(StepKind kind, string from, string part, Fact fact) => new(
        kind, from, part, fact.Standing!.Value, [.. fact.Positives.Select(s => s.Id)], fact.Leading!.Source, fact.Leading.Locator);
}
