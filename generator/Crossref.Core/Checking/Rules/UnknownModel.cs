using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A model that the family does not have: of a machine, or in a condition.</summary>
internal sealed class UnknownModel : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0409", Severity.Error, "Unknown model",
        "A condition on a model that does not exist never holds, and a machine of it meets none.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var machine in scope.Whole<Machine>().Where(m => m.Model is not null))
        {
            foreach (var d in Unknown(scope, machine.Family, [machine.Model!], scope.PlaceOf(machine, "model"))) yield return d;
        }
        foreach (var position in scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions))
        {
            foreach (var listing in position.Listed)
            {
                foreach (var d in Unknown(scope, new Ref(position.Family, default), listing.OnlyIf.Models, listing.OnlyIf.Place)) yield return d;
            }
        }
        foreach (var claim in scope.Whole<Claim>())
        {
            // An address begins with its family; a comparison of parts anywhere speaks of no family.
            if ((claim.At ?? claim.Where) is not { } where) continue;
            foreach (var d in Unknown(scope, where with { Id = where.Id.Split('/')[0] }, claim.OnlyIf.Models, claim.OnlyIf.Place)) yield return d;
        }
    }

    private IEnumerable<Diagnostic> Unknown(CheckScope scope, Ref familyId, IEnumerable<string> models, Place place)
    {
        if (scope.Find<Family>(familyId) is not { Models.Count: > 0 } family) yield break;
        var known = family.Models.Select(m => m.Name).ToList();
        foreach (var model in models.Where(m => !known.Contains(m, StringComparer.Ordinal)))
        {
            yield return Code.At(place, $"{family.Id} has no model '{model}'", scope.Hint(model, known, $"its models are {string.Join(", ", known)}"));
        }
    }
}
