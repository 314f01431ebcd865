namespace Crossref.Core.Checking.Rules;

/// <summary>Claims that withdraw each other in a circle.</summary>
internal sealed class WithdrawalCycle : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0601", Severity.Error, "Withdrawal in a circle",
        "Nobody could tell which of the claims still stand.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var claims = scope.Library.Claims;
        foreach (var circle in Cycles.Find(claims.Keys.Order(StringComparer.Ordinal), id => claims.GetValueOrDefault(id)?.Withdraws is { } next ? [next.Id] : []))
        {
            yield return Code.At(claims[circle[0]].Withdraws!.Value.Place,
                circle.Count == 1 ? $"'{circle[0]}' withdraws itself" : $"these claims withdraw each other in a circle: {Cycles.Text(circle)}",
                "a claim withdraws an earlier one; write a new claim for what holds now");
        }
    }
}
