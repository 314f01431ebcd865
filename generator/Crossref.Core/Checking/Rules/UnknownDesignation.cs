using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A bearing whose designation cannot be read.</summary>
internal sealed class UnknownDesignation : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0901", Severity.Warning, "Designation not known",
        "No size follows from it, so the part is compared by what is written under size alone.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        // The designations of other kinds fix no sizes here.
        foreach (var part in scope.Whole<Part>().Where(p => p.Kind.Name == "bearing" && p.Standard is not null))
            if (!BearingDesignation.TryRead(part.Standard!, out _, out var problem))
                yield return Code.At(scope.PlaceOf(part, "standard"), $"'{part.Standard}': {problem}", "correct it, or leave standard: out and write the sizes under size:");
    }
}
