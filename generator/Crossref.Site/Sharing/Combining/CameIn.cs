using System.Text.Json;
using Crossref.Core.Records;
using Crossref.Core.Storing;

namespace Crossref.Site.Sharing.Combining;

/// <summary>What the last combining brought in, as it was noted in the content folder.</summary>
/// <param name="Date">The day.</param>
/// <param name="From">The library whose copy it was.</param>
/// <param name="Decisions">What was decided, records that needed nothing left out.</param>
public sealed record CameIn(string Date, string From, IReadOnlyList<Decision> Decisions)
{
    /// <summary>Reads the note; null when there is none, or when it cannot be read.</summary>
    public static CameIn? Read(string contentFolder, IDisk disk)
    {
        ArgumentNullException.ThrowIfNull(disk);
        var path = Path.Combine(contentFolder, Combiner.CameIn);
        try
        {
            if (!disk.HasFile(path)) return null;
            using var json = JsonDocument.Parse(disk.Read(path));
            var root = json.RootElement;
            return new CameIn(
                root.GetProperty("date").GetString()!, root.GetProperty("from").GetString()!,
                [.. root.GetProperty("records").EnumerateArray().Select(Decision).OfType<Decision>()]);
        }
        // It is a report about the past; a damaged one is the same as none.
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }

    private static Decision? Decision(JsonElement row) =>
        Words.Parse<CombineOutcome>(Text(row, "outcome")) is { } outcome && Words.Parse<RecordType>(Text(row, "type")) is { } type
            ? new Decision(outcome, type, Text(row, "id"), Text(row, "file"), [.. row.GetProperty("keys").EnumerateArray().Select(k => k.GetString()!)], Text(row, "why"))
            : null;

    private static string Text(JsonElement row, string key) => row.GetProperty(key).GetString()!;
}
