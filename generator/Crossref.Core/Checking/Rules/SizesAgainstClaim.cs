using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Checking.Rules;

/// <summary>A claim that a part fits, though its sizes on record say otherwise.</summary>
internal sealed class SizesAgainstClaim : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0903", Severity.Warning, "Sizes contradict a claim",
        "Either a size on record is wrong, or it went in with a change that nobody wrote down, or it does not fit.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var sizes = new SizeBook(scope.Library);
        // Where somebody has said no already, there is nothing left to do.
        var answered = scope.Standing.Where(c => c.Verdict == Verdict.DoesNotFit).Select(FactOf).ToHashSet();
        foreach (var claim in scope.Standing.Where(c => c.Verdict is Verdict.Fits or Verdict.FitsWithChange))
        {
            if (scope.Find<Part>(claim.Part) is not { } part || answered.Contains(FactOf(claim))) continue;
            var others = Others(scope, claim).ToList();
            if (others.Count == 0) continue;
            var compared = others.ConvertAll(other => sizes.Compare(part.Id, other.Id));
            // It differs where it differs from every part that belongs here.
            var differing = compared[0].Where((first, i) => Matters(scope, claim, first) && compared.TrueForAll(c => c[i].Agreement == Agreement.Differs)).ToList();
            if (differing.Count == 0) continue;
            var texts = differing.Select(d => $"{d.Attribute} {Text(d.One)} against {Text(d.Other)}");
            yield return Code.At(
                scope.PlaceOf(claim, "verdict"), $"{part.Id} is said to fit, but {string.Join("; ", texts)} ({string.Join(", ", others.Select(o => o.Id))})",
                (differing.Exists(d => d.MustMatch) ? "a size that must match rules it out whatever is claimed: measure again, and correct the size or withdraw the claim"
                    : "measure again, or write verdict: fits-with-change and what was changed") + string.Concat(differing.Select(BareReading.Hint)));
        }
    }

    private static (string Part, string? At, string? Replaces) FactOf(Claim claim) => (claim.Part.Id, claim.At?.Id, claim.Replaces?.Id);

    // A listed part may differ from another one that is listed for other machines.
    private static IEnumerable<Part> Others(CheckScope scope, Claim claim)
    {
        var others = claim.Replaces is { } other ? [other] : scope.Position(claim.At)?.Listed.Select(l => l.Part).ToList() ?? [];
        return others.Exists(o => o.Id == claim.Part.Id) ? [] :
            others.Select(to => scope.Find<Part>(to)).OfType<Part>().Where(p => !p.Retired).DistinctBy(p => p.Id);
    }

    // A change is there to get over a difference, and whoever made both parts knows of it. Ratings and closures are compared
    // on the pages, but they do not keep a part from going in.
    private static bool Matters(CheckScope scope, Claim claim, SizeComparison comparison) =>
        comparison.MustMatch ||
        claim.Verdict == Verdict.Fits && !(claim.Basis == Basis.Documented && scope.Library.Documents(claim.Source)) && SizeName.Find(comparison.Attribute)?.Measures is Dimension.Length or Dimension.Angle or Dimension.Number;

    private static string Text(KnownSize? size) => size?.Size is not { } known ? "?" : known.Quantity?.ToString() ?? known.Text;
}
