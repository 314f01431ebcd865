using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading;

/// <summary>What the reader remembers along the way so that the checks report no mistake a second time.</summary>
internal sealed class ReadingNotes
{
    // Keys that a rule points at although the record keeps no place for them.
    private static readonly HashSet<string> Pointed =
        new(["date", "dated", "expected", "received", "basis", "model", "size", "standard", "verdict", .. SharedShapes.CountKeys], StringComparer.Ordinal);

    private readonly HashSet<string> _incomplete = new(StringComparer.Ordinal);
    private readonly HashSet<string> _lost = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, string), Place> _keys = [];

    private Target _nameless;

    /// <summary>Whether the library's own document stands in text that could not be read.</summary>
    internal bool HasLostLibrary { get; private set; }

    internal void Lose(string id) => _lost.Add(id);

    /// <summary>A document of that type is there, but nobody knows its id.</summary>
    internal void LoseIdOf(RecordType type)
    {
        HasLostLibrary |= type == RecordType.Library;
        _nameless |= type switch
        {
            RecordType.Family => Target.Family | Target.Assembly | Target.Position,
            RecordType.Repair => Target.Repair | Target.Claim,
            _ => Targets.Of(type),
        };
    }

    internal void LoseAll(string unreadText)
    {
        foreach (var (type, id) in LostIds.In(unreadText))
        {
            if (id is null) LoseIdOf(type);
            else _lost.Add(id);
            HasLostLibrary |= type == RecordType.Library;
        }
    }

    internal void Remember(string id, MapNode map, ShapeChecker checker)
    {
        if (checker.Incomplete) _incomplete.Add(id);
        if (checker.Lost) _lost.Add(id);
        foreach (var entry in map.Entries.Where(e => Pointed.Contains(e.Key))) _keys.TryAdd((id, entry.Key), entry.Value.Place);
    }

    internal CheckContext Context() => new(default) { Incomplete = _incomplete, Lost = _lost, Nameless = _nameless, Keys = _keys };
}
