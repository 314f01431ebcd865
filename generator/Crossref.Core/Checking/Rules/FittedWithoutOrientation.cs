using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A handed part fitted without a word on which way round.</summary>
internal sealed class FittedWithoutOrientation : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0701", Severity.Error, "Fitted, but which way round?",
        "A handed part that fails may have been fitted the wrong way round; without a note nobody can tell.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        scope.Whole<Repair>().SelectMany(r => r.Fitted)
            .Where(f => f.Orientation.Count == 0 && scope.Find<Part>(f.Part) is { Handed: true })
            .Select(f => Code.At(f.Place, $"'{f.Part}' is handed, but its orientation is not noted", "add orientation: with how it went in, such as {flange: inboard}"));
}
