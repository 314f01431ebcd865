using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading.Mapping;

/// <summary>
/// Gives what another library's records refer to its address from here: its own machine or claim is meant where it has
/// one of that id, a shared part or position everywhere else.
/// </summary>
internal sealed class OtherLibraries
{
    private readonly HashSet<string> _theirs;
    private readonly string? _ours;

    internal OtherLibraries(IReadOnlyList<RawRecord> records)
    {
        _theirs = records.Select(r => r.Id).Where(id => Owner.Of(id) is not null).ToHashSet(StringComparer.Ordinal);
        _ours = records.FirstOrDefault(r => r.Type == RecordType.Library && Owner.Of(r.Id) is null)?.Id;
    }

    /// <summary>A record with its references as they are addressed from here.</summary>
    internal RawRecord Addressed(RawRecord record) => Owner.OfFile(record.Map.Place.File) is { } library
        ? record with { Map = Map(record.Map, RecordShapes.Documents.Single(d => d.Type == record.Type), library) }
        : record;

    /// <summary>A note with its references as they are addressed from here.</summary>
    internal Note Addressed(Note note) => Owner.OfFile(note.Place.File) is { } library
        ? note with { About = [.. note.About.Select(r => r with { Id = Address(r.Id, library) })], Links = [.. note.Links.Select(l => Link(l, library))] }
        : note;

    private Ref Link(Ref link, string library)
    {
        var scheme = link.Id[..(link.Id.IndexOf(':', StringComparison.Ordinal) + 1)];
        return link with { Id = scheme + Address(link.Id[scheme.Length..], library) };
    }

    // A claim that a repair makes is named repair/position.
    private string Address(string id, string library)
    {
        if (Owner.Of(id) == _ours && _ours is not null) return Owner.Local(id);
        var theirs = Owner.Address(library, id);
        return _theirs.Contains(theirs.Split('/')[0]) ? theirs : id;
    }

    private MapNode Map(MapNode map, MapShape shape, string library) => map with
    {
        Entries = [.. map.Entries.Select(e => shape.Find(e.Key) is { } key ? e with { Value = Value(e.Value, key.Value, library) } : e)],
    };

    private Node Value(Node value, ValueShape shape, string library) => (shape.Kind, value) switch
    {
        (ValueKind.Reference, ScalarNode s) when !shape.Words.Contains(s.Text, StringComparer.Ordinal) => s with { Text = Address(s.Text, library) },
        (ValueKind.List, ListNode list) => list with { Items = [.. list.Items.Select(i => Value(i, shape.Item!, library))] },
        (ValueKind.Map, MapNode map) => Map(map, shape.Map!, library),
        _ => value,
    };
}
