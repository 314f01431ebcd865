using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A unit swapped for another assembly than its own.</summary>
internal sealed class SwapOfOtherAssembly : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0707", Severity.Error, "Swap of another assembly",
        "A unit goes where one of its own assembly came out.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var swap in scope.Whole<Repair>().Select(r => r.Swapped).OfType<Swap>().Where(s => scope.Assemblies.ContainsKey(s.Assembly.Id)))
        {
            foreach (var to in new[] { swap.Out, swap.In }.OfType<Ref>())
            {
                if (scope.Find<Unit>(to) is { Assembly.Id.Length: > 0 } unit && !scope.IsDead(unit.Assembly) && unit.Assembly.Id != swap.Assembly.Id)
                    yield return Code.At(to.Place, $"'{unit.Id}' is a unit of {unit.Assembly}, not of {swap.Assembly}", "name a unit of the assembly that was swapped");
            }
        }
    }
}
