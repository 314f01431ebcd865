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
            var strange = new[] { swap.Out, swap.In }.OfType<Ref>()
                .Select(to => (To: to, Unit: scope.Find<Unit>(to)))
                .Where(s => s.Unit is { Assembly.Id.Length: > 0 } unit && !scope.IsDead(unit.Assembly) && unit.Assembly.Id != swap.Assembly.Id).ToList();
            if (strange is [var (_, one), var (_, other)] && one!.Assembly.Id == other!.Assembly.Id)
            {
                yield return Code.At(swap.Assembly.Place, $"'{one.Id}' and '{other.Id}' are units of {one.Assembly}, not of {swap.Assembly}", "name the assembly that was swapped");
                continue;
            }
            foreach (var (to, unit) in strange)
            {
                yield return Code.At(to.Place, $"'{unit!.Id}' is a unit of {unit.Assembly}, not of {swap.Assembly}", "name a unit of the assembly that was swapped");
            }
        }
    }
}
