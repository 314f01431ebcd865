using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A withdrawal of a claim that speaks of something else.</summary>
internal sealed class WithdrawsOtherFact : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0602", Severity.Error, "Withdrawal of another fact",
        "A claim takes back what was said of the same part in the same place; anything else is a slip in the id.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var claim in scope.Whole<Claim>())
        {
            if (claim.Withdraws is { } other && Owner.Of(other.Id) != Owner.Of(claim.Id))
            {
                // What another library tries does nothing here, and nobody here can mend it.
                if (Owner.Of(claim.Id) is null) yield return Code.At(other.Place, $"'{other.Id}' is a claim of {scope.Library.ShopName(scope.Library.ShopOf(other.Id))}", "write a claim of your own that says otherwise; only its own library takes a claim back");
                continue;
            }
            if (claim.Withdraws is not { } to || FactOf(scope, to) is not { } fact || FactOf(scope, claim) is not { } own || fact == own) continue;
            yield return Code.At(to.Place, $"'{to.Id}' is about {fact.Part} {(fact.At is { } at ? $"at {at}" : $"for {fact.Replaces}")}",
                "withdraw a claim about the same part and the same position or part");
        }
    }

    private static (string Part, string? At, string? Replaces)? FactOf(CheckScope scope, Ref to)
    {
        if (scope.Find<Claim>(to) is { } claim) return FactOf(scope, claim);
        return scope.Made(to.Id) is { Part.Id.Length: > 0 } fitting && !scope.IsDead(fitting.Part) ? (fitting.Part.Id, fitting.Position.Id, null) : null;
    }

    private static (string Part, string? At, string? Replaces)? FactOf(CheckScope scope, Claim claim) =>
        scope.IsDead(claim.Part) || scope.IsDead(claim.At) || scope.IsDead(claim.Replaces) ? null : (claim.Part.Id, claim.At?.Id, claim.Replaces?.Id);
}
