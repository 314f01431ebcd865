using System.Globalization;
using System.Text.Json;
using Crossref.Core.Storing;

namespace Crossref.Site.Sharing.Publishing;

/// <summary>
/// What a library said at its last two packings, as it is kept in the content folder, so that a build can tell what has
/// come since. It does not travel: whoever has the stick packs sticks of their own.
/// </summary>
/// <param name="Last">The last packing.</param>
/// <param name="Before">The last one of an earlier day; null when there was none.</param>
public sealed record Publications(PublishedState Last, PublishedState? Before)
{
    /// <summary>Where it lies below the content folder.</summary>
    public const string FileName = ContentStore.OwnFolder + "/published.json";

    private const string Format = "crossref-published-1";

    /// <summary>
    /// What a stick that is packed on a day is compared with. A stick that is packed again on the same day is the same
    /// stick: what is new on it is new since the one before.
    /// </summary>
    public PublishedState? ComparedOn(DateOnly day) => Last.Date == day ? Before : Last;

    /// <summary>What is kept after a packing.</summary>
    public static Publications After(Publications? old, PublishedState now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return new Publications(now, old?.ComparedOn(now.Date));
    }

    /// <summary>What was kept in a content folder; null when nothing was, or when it cannot be read.</summary>
    public static Publications? Read(string folder, IDisk disk)
    {
        ArgumentNullException.ThrowIfNull(disk);
        var path = Path.Combine(folder, FileName);
        try
        {
            if (!disk.HasFile(path)) return null;
            using var json = JsonDocument.Parse(disk.Read(path));
            var root = json.RootElement;
            if (root.GetProperty("format").GetString() != Format) return null;
            return new Publications(State(root.GetProperty("last")), root.TryGetProperty("before", out var before) ? State(before) : null);
        }
        // It only tells what is new; a damaged one is the same as none.
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or FormatException or InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The file that keeps it.</summary>
    public FileChange ToFile()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            Write(json, "last", Last);
            if (Before is not null) Write(json, "before", Before);
            json.WriteEndObject();
        }
        return new FileChange(FileName, stream.ToArray());
    }

    private static PublishedState State(JsonElement state) => new(
        DateOnly.ParseExact(state.GetProperty("date").GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        state.GetProperty("standings").EnumerateArray().ToDictionary(s => (s[0].GetString()!, s[1].GetString()!), s => s[2].GetString()!),
        state.GetProperty("recorded").EnumerateArray().Select(r => r.GetString()!).ToHashSet(StringComparer.Ordinal));

    private static void Write(Utf8JsonWriter json, string name, PublishedState state)
    {
        json.WriteStartObject(name);
        json.WriteString("date", state.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteStartArray("recorded");
        foreach (var id in state.Recorded.Order(StringComparer.Ordinal)) json.WriteStringValue(id);
        json.WriteEndArray();
        json.WriteStartArray("standings");
        foreach (var ((position, part), word) in state.Standings.OrderBy(s => s.Key.Position, StringComparer.Ordinal).ThenBy(s => s.Key.Part, StringComparer.Ordinal))
        {
            json.WriteStartArray();
            json.WriteStringValue(position);
            json.WriteStringValue(part);
            json.WriteStringValue(word);
            json.WriteEndArray();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
