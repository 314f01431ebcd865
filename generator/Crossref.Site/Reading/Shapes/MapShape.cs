using Crossref.Core.Records;

namespace Crossref.Site.Reading.Shapes;

/// <summary>The keys of a record or of a map within one.</summary>
/// <param name="Name">What it is, such as "position".</param>
/// <param name="Keys">Its keys, the one with the id first if it has one.</param>
/// <param name="Demands">What must hold between keys.</param>
internal sealed record MapShape(string Name, IReadOnlyList<KeyShape> Keys, IReadOnlyList<Demand> Demands)
{
    private readonly Dictionary<string, KeyShape> _byName = Keys.ToDictionary(k => k.Name, StringComparer.Ordinal);

    /// <summary>The record type; null for a map within a record.</summary>
    internal RecordType? Type { get; init; }

    /// <summary>The names of the keys.</summary>
    internal IReadOnlyCollection<string> Names => _byName.Keys;

    /// <summary>The key of that name; null when there is none.</summary>
    internal KeyShape? Find(string name) => _byName.GetValueOrDefault(name);
}
