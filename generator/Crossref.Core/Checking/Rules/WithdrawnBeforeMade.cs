using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A withdrawal that is older than what it withdraws.</summary>
internal sealed class WithdrawnBeforeMade : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0804", Severity.Warning, "Withdrawn before it was claimed",
        "A claim takes back an earlier one; here the order is the other way round.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var claim in scope.Whole<Claim>())
        {
            if (claim.Withdraws is { } to && scope.Find<Claim>(to) is { } earlier && !scope.IsFuture(earlier.Date) && claim.Date.SurelyBefore(earlier.Date))
                yield return Code.At(to.Place, $"withdrawn {claim.Date}, but '{earlier.Id}' was claimed {earlier.Date}", "correct one of the dates, or let the later claim withdraw the earlier one");
        }
    }
}
