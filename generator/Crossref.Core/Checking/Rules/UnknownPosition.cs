namespace Crossref.Core.Checking.Rules;

/// <summary>An address of a position that no family has.</summary>
internal sealed class UnknownPosition : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0405", Severity.Error, "Unknown position",
        "A finding counts where it was made; without the position it counts nowhere.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        scope.References.Where(r => r.Fate == Fate.UnknownPosition).Select(r => r.Reference.To).Select(to =>
            Code.At(to.Place, $"there is no position '{to.Id}'", scope.Hint(to.Id, scope.Positions.Keys, "an address is family/assembly/position, as the family's document names them")));
}
