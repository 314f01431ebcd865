using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A unit in a machine of another family.</summary>
internal sealed class UnitInOtherFamily : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0706", Severity.Error, "Unit in a machine of another family",
        "An assembly belongs to its family; in another machine it would have other positions.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var unit in scope.Whole<Unit>())
        {
            if (unit.Machine is { } to && scope.Find<Machine>(to) is { } machine && scope.Find<Family>(machine.Family) is { } family && family.Id != unit.Family.Id && !scope.IsDead(unit.Family))
                yield return Code.At(to.Place, $"'{unit.Id}' is a unit of {unit.Family}, '{machine.Id}' is a {family.Id}", "correct the machine or the unit's family");
        }
    }
}
