using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A run too short to count as one.</summary>
internal sealed class RanTooShort : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0605", Severity.Warning, "Run too short",
        "A few sheets show that a part turns, not that it runs; the claim counts as seated.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var proving = scope.Library.Card.Proving;
        foreach (var claim in scope.Standing)
        {
            if (claim is { Basis: Basis.Ran, Run: { } run } && run.Value < proving.NeededToCount(run.Unit))
                yield return Code.At(scope.PlaceOf(claim, Words.Of(run.Unit)), $"{run} is below {new Count(proving.NeededToCount(run.Unit), run.Unit)}, so it counts as seated", "write basis: seated, or claim again after a longer run");
        }
    }
}
