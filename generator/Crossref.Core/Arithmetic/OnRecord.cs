using Crossref.Core.Arithmetic.Rolling;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic;

/// <summary>What calculators may look up in the library: the places that turn, and the machines they are in.</summary>
/// <param name="Turning">Every position of which it is known how far the sheet goes in one turn, by address.</param>
public sealed record OnRecord(IReadOnlyList<TurningPlace> Turning)
{
    /// <summary>Machines and families in use, by id.</summary>
    public IReadOnlyList<KnownMachine> Machines { get; init; } = [];

    /// <summary>No library at hand.</summary>
    public static OnRecord Nothing { get; } = new([]);

    /// <summary>What a library has on record.</summary>
    public static OnRecord Of(Library library) => new(TurningPlaces.Of(library))
    {
        Machines =
        [
            .. library.Machines.Values.Where(m => !m.Retired && !Owner.IsElsewhere(m)).Select(m => new KnownMachine(m.Id, m.Name ?? m.Id, m.Family.Id))
                .Concat(library.Families.Values.Where(f => !f.Retired).Select(f => new KnownMachine(f.Id, f.Name, f.Id)))
                .OrderBy(m => m.Id, StringComparer.Ordinal),
        ],
    };
}
