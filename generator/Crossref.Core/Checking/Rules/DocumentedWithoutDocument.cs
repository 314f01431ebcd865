using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A documented claim without a document.</summary>
internal sealed class DocumentedWithoutDocument : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0603", Severity.Warning, "Documented without a document",
        "Only a parts list, manual, bulletin or standard documents; without one the claim counts as told.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var claim in scope.Standing.Where(c => c.Basis == Basis.Documented))
        {
            if (claim.Source is { } to && scope.Find<Source>(to) is not { Documents: false } && scope.Find<Repair>(to) is null) continue;
            yield return Code.At(scope.PlaceOf(claim, "basis"),
                claim.Source is null ? "documented, but no source is named" : $"documented, but '{claim.Source}' is not a document of the maker or a standard",
                "name a source of type parts-list, manual, bulletin or standard, or write the basis that it has");
        }
    }
}
