namespace Crossref.Core.Checking.Rules;

/// <summary>A reference to a record that was retired.</summary>
internal sealed class RetiredReference : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0407", Severity.Warning, "Reference to something retired",
        "What is retired is left out of answers, so what refers to it may be left hanging.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        scope.References.Where(r => r.Fate == Fate.Retired).Select(r => r.Reference.To).Select(to =>
            Code.At(to.Place, $"'{to.Id}' is retired", "refer to what took its place, or retire this record too"));
}
