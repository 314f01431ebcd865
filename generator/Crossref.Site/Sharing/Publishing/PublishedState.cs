using System.Globalization;
using System.Text.Json;
using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Storing;

namespace Crossref.Site.Sharing.Publishing;

/// <summary>
/// What a library said when a stick was last packed: how every part stood at every position, without a machine, and what
/// had been recorded. Kept in the content folder, so that a build can tell what has come since.
/// </summary>
/// <param name="Date">The day it was packed.</param>
/// <param name="Standings">The word by position and part, such as "seated", "lead", "disputed", "ruled out".</param>
/// <param name="Recorded">Ids of claims, repairs and questions; those of withdrawn claims are left out.</param>
public sealed record PublishedState(
    DateOnly Date, IReadOnlyDictionary<(string Position, string Part), string> Standings, IReadOnlySet<string> Recorded)
{
    /// <summary>Where it lies below the content folder.</summary>
    public const string FileName = ContentStore.OwnFolder + "/published.json";

    private const string Format = "crossref-published-1";

    /// <summary>What a library says now.</summary>
    public static PublishedState Of(Library library, DateOnly date)
    {
        var fits = new Fits(library);
        return Of(library, fits.Book.Withdrawals, library.Positions.Keys.Select(p => fits.At(p)), date);
    }

    /// <summary>What a library says now, of answers that are known already.</summary>
    internal static PublishedState Of(Library library, Withdrawals withdrawals, IEnumerable<FitsAnswer> answers, DateOnly date)
    {
        var standings = new Dictionary<(string, string), string>();
        foreach (var answer in answers)
        {
            foreach (var candidate in answer.Candidates) standings[(answer.Position, candidate.Part)] = candidate.Standing;
            foreach (var refusal in answer.Disputed) standings[(answer.Position, refusal.Part)] = ChangesSince.Disputed;
            foreach (var refusal in answer.RuledOut) standings[(answer.Position, refusal.Part)] = ChangesSince.RuledOut;
        }
        var recorded = library.Claims.Values.Where(c => !c.Retired && withdrawals.Stands(c.Id)).Select(c => c.Id)
            .Concat(library.Repairs.Values.Where(r => !r.Retired).Select(r => r.Id))
            .Concat(library.Questions.Values.Where(q => !q.Retired).Select(q => q.Id));
        return new PublishedState(date, standings, recorded.ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>The state that was kept in a content folder; null when none was, or when it cannot be read.</summary>
    public static PublishedState? Read(string folder, IDisk disk)
    {
        ArgumentNullException.ThrowIfNull(disk);
        var path = Path.Combine(folder, FileName);
        try
        {
            if (!disk.HasFile(path)) return null;
            using var json = JsonDocument.Parse(disk.Read(path));
            var root = json.RootElement;
            if (root.GetProperty("format").GetString() != Format) return null;
            return new PublishedState(
                DateOnly.ParseExact(root.GetProperty("date").GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture),
                root.GetProperty("standings").EnumerateArray().ToDictionary(s => (s[0].GetString()!, s[1].GetString()!), s => s[2].GetString()!),
                root.GetProperty("recorded").EnumerateArray().Select(r => r.GetString()!).ToHashSet(StringComparer.Ordinal));
        }
        // It only tells what is new; a damaged one is the same as none.
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or FormatException or InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The state as it is kept.</summary>
    public FileChange ToFile()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = false }))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteString("date", Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteStartArray("recorded");
            foreach (var id in Recorded.Order(StringComparer.Ordinal)) json.WriteStringValue(id);
            json.WriteEndArray();
            json.WriteStartArray("standings");
            foreach (var ((position, part), word) in Standings.OrderBy(s => s.Key.Position, StringComparer.Ordinal).ThenBy(s => s.Key.Part, StringComparer.Ordinal))
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
        return new FileChange(FileName, stream.ToArray());
    }
}
