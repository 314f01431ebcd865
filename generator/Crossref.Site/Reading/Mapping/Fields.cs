using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading.Mapping;

/// <summary>
/// Takes values out of a checked map. Whatever is absent or was refused gives nothing, or the record's own default;
/// the shape has reported it already.
/// </summary>
internal sealed class Fields(MapNode map)
{
    internal Place Place => map.Place;

    internal Place PlaceOf(string key) => map[key]?.Place ?? map.Place;

    /// <summary>Whether something is written under the key, readable or not.</summary>
    internal bool Has(string key) => map[key] is not null;

    internal string? Text(string key) => (map[key] as ScalarNode)?.Text;

    internal string TextOr(string key, string otherwise) => Text(key) ?? otherwise;

    internal bool Yes(string key) => Text(key) == "true";

    internal int Whole(string key, int otherwise) => Decimal(key) is { } d ? (int)d : otherwise;

    internal int? Whole(string key) => (int?)Decimal(key);

    internal decimal? Decimal(string key) => Text(key) is { } t && Shapes.Scalars.TryNumber(t, out var number) ? number : null;

    internal PartialDate Date(string key) => MaybeDate(key) ?? PartialDate.Unknown;

    internal PartialDate? MaybeDate(string key) => Text(key) is { } t && PartialDate.TryParse(t, out var date) ? date : null;

    internal Quantity? Quantity(string key, Dimension dimension) =>
        Text(key) is { } t && QuantityParser.TryParse(t, dimension, out var quantity, out _) ? quantity : null;

    internal decimal? Volts(string key) => Quantity(key, Dimension.Voltage)?.Value;

    internal T? Word<T>(string key) where T : struct, Enum => Text(key) is { } t ? Words.Parse<T>(t) : null;

    /// <summary>A reference; null when absent or when one of the words stands there instead.</summary>
    internal Ref? Ref(string key, params ReadOnlySpan<string> words) =>
        map[key] is ScalarNode s && !words.Contains(s.Text) ? new Ref(s.Text, s.Place) : null;

    /// <summary>A required reference; one without an id, which nothing looks up, when it was refused.</summary>
    internal Ref RequiredRef(string key) => Ref(key) ?? new Ref("", PlaceOf(key));

    internal IReadOnlyList<Ref> Refs(string key) => [.. Scalars(key).Select(s => new Ref(s.Text, s.Place))];

    internal IReadOnlyList<string> Texts(string key) => [.. Scalars(key).Select(s => s.Text)];

    internal Fields? Map(string key) => map[key] is MapNode inner ? new Fields(inner) : null;

    internal IEnumerable<Fields> Maps(string key) =>
        map[key] is ListNode list ? list.Items.OfType<MapNode>().Select(m => new Fields(m)) : [];

    internal IReadOnlyDictionary<string, string> TextMap(string key) => Pairs(key).ToDictionary(p => p.Key, p => p.Text, StringComparer.Ordinal);

    /// <summary>The words and texts of a map, as written, each word once.</summary>
    internal IEnumerable<(string Key, string Text)> Pairs(string key) =>
        map[key] is MapNode inner
            ? inner.Entries.Where(e => e.Value is ScalarNode).DistinctBy(e => e.Key).Select(e => (e.Key, ((ScalarNode)e.Value).Text))
            : [];

    /// <summary>The count under <c>sheets</c>, <c>cycles</c> or <c>hours</c>.</summary>
    internal Count? Count()
    {
        foreach (var unit in Enum.GetValues<CountUnit>())
        {
            if (Decimal(Words.Of(unit)) is { } value) return new Count(value, unit);
        }
        return null;
    }

    internal bool? NeighboursDamaged => Text("neighbours") switch
    {
        "damaged" => true,
        "undamaged" => false,
        _ => null,
    };

    internal IReadOnlyList<Picture> Pictures =>
        [.. Maps("pictures").Where(p => p.Text("file") is not null).Select(p => new Picture(Owner.FileNamedIn(Place.File, p.Text("file")!), p.TextOr("shows", ""), p.PlaceOf("file")))];

    internal Condition OnlyIf => Map("only-if") is not { } c ? Condition.None : new Condition
    {
        Models = c.Texts("models"),
        SerialFrom = c.Text("serial-from"),
        SerialTo = c.Text("serial-to"),
        Mains = c.Volts("mains"),
        Place = c.Place,
    };

    private IEnumerable<ScalarNode> Scalars(string key) => map[key] is ListNode list ? list.Items.OfType<ScalarNode>() : [];
}
