namespace Crossref.Core.Checking.Rules;

/// <summary>An assembly that the family does not have.</summary>
internal sealed class UnknownAssembly : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0406", Severity.Error, "Unknown assembly",
        "Positions are found through their assembly.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        scope.References.Where(r => r.Fate == Fate.UnknownAssembly).Select(r => r.Reference.To).Select(to =>
            Code.At(to.Place, $"there is no assembly '{to.Id}'", scope.Hint(to.Id, scope.Assemblies.Keys, "write an assembly that the family's document names")));
}
