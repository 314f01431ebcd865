using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>Two assemblies of a family, or two positions of an assembly, with one id.</summary>
internal sealed class RepeatedAddress : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0402", Severity.Error, "Address used twice",
        "An address names one place in one family; each side of a machine is a position of its own.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var family in scope.Library.Families.Values)
        {
            var first = new Dictionary<string, Place>(StringComparer.Ordinal);

            // Of an assembly that is written twice the second is reported, not once more everything in it.
            var all = family.Assemblies.Select(a => (a.Address, a.Place))
                .Concat(family.Assemblies.DistinctBy(a => a.Id).SelectMany(a => a.Positions).Select(p => (p.Address, p.Place)));
            foreach (var (address, place) in all)
            {
                if (!first.TryAdd(address, place))
                    yield return Code.At(place, $"'{address}' is written twice, first in {first[address]}", "give one of them another id; two sides are told apart by names such as -front and -rear");
            }
        }
    }
}
