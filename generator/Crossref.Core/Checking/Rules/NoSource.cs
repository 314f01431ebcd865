using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A claim without a source.</summary>
internal sealed class NoSource : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0604", Severity.Warning, "Claim without a source",
        "What nobody can look up counts as told, whatever basis is written.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        // Told and offered lose nothing; documented has a rule of its own.
        scope.Standing
            .Where(c => c.Source is null && c.Basis is not (null or Basis.Told or Basis.Offered or Basis.Documented))
            .Select(c => Code.At(scope.PlaceOf(c, "basis"), $"{Words.Of(c.Basis!.Value)}, but no source is named, so it counts as told", "add source: with a source record or a repair"));
}
