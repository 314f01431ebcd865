using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A claim that a part replaces itself.</summary>
internal sealed class ReplacesItself : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0608", Severity.Error, "Part that replaces itself",
        "It says nothing, so another part was meant.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        scope.Whole<Claim>().Where(c => c.Replaces is { } r && r.Id == c.Part.Id)
            .Select(c => Code.At(c.Replaces!.Value.Place, $"'{c.Part.Id}' is said to replace itself", "name the part it was fitted instead of"));
}
