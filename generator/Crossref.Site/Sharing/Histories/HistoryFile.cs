using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Crossref.Core.Checking;
using Crossref.Core.Records;

namespace Crossref.Site.Sharing.Histories;

/// <summary>
/// The file in which a folder's history is kept: a line with the format's version and the hash of what follows, then
/// compressed JSON. A file that is damaged, of another version or too large is no history.
/// </summary>
internal static class HistoryFile
{
    /// <summary>Its path below the content folder.</summary>
    internal const string Path = Core.Storing.ContentStore.OwnFolder + "/history";

    // A record is no deeper than its reader allows, and more copies than this do not differ at one key.
    private const int Deepest = 40;
    private const int MostMarks = 50;

    private const string Version = "crossref history 1 ";

    internal static byte[] Write(HistoryBook book)
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        using (var json = new Utf8JsonWriter(zip))
        {
            json.WriteStartObject();
            json.WriteStartArray("aside");
            foreach (var hash in book.Aside) json.WriteStringValue(hash);
            json.WriteEndArray();
            json.WriteStartObject("records");
            foreach (var (name, history) in book.Records)
            {
                json.WriteStartObject(name);
                Write(json, history);
                json.WriteEndObject();
            }
            json.WriteEndObject();
            json.WriteEndObject();
        }
        var content = packed.ToArray();
        return [.. Encoding.ASCII.GetBytes(Version + Convert.ToHexStringLower(SHA256.HashData(content)) + "\n"), .. content];
    }

    /// <summary>The history in a file; null with what is wrong with it.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="most">How large it may be when unpacked.</param>
    /// <param name="fault">What is wrong.</param>
    internal static HistoryBook? Read(byte[] bytes, long most, out string fault)
    {
        var end = Array.IndexOf(bytes, (byte)'\n');
        var first = end < 0 ? "" : Encoding.ASCII.GetString(bytes, 0, end);
        fault = "is not one that this tool knows";
        if (!first.StartsWith(Version, StringComparison.Ordinal)) return null;
        fault = "is damaged";
        if (first[Version.Length..] != Convert.ToHexStringLower(SHA256.HashData(bytes.AsSpan(end + 1)))) return null;
        try
        {
            using var zip = new GZipStream(new MemoryStream(bytes, end + 1, bytes.Length - end - 1), CompressionMode.Decompress);
            using var json = new MemoryStream();
            var buffer = new byte[81920];
            for (int read; (read = zip.Read(buffer)) > 0;)
            {
                json.Write(buffer, 0, read);
                if (json.Length <= most) continue;
                fault = "is far larger than its records";
                return null;
            }
            using var document = JsonDocument.Parse(json.GetBuffer().AsMemory(0, (int)json.Length), new JsonDocumentOptions { MaxDepth = 16 });
            return Book(document.RootElement);
        }
        catch (Exception e) when (e is JsonException or InvalidDataException or InvalidOperationException or KeyNotFoundException or FormatException or IndexOutOfRangeException or ArgumentException)
        {
            return null;
        }
    }

    private static void Write(Utf8JsonWriter json, RecordHistory history)
    {
        json.WriteString("type", Words.Of(history.Type));
        if (history.Only is { } only)
        {
            json.WriteString("text", only.Text);
            json.WriteString("library", only.Library);
            json.WriteString("date", only.Date);
            return;
        }
        json.WriteStartArray("known");
        foreach (var state in history.Known) json.WriteStringValue(state);
        json.WriteEndArray();
        json.WriteStartObject("marks");
        foreach (var (key, marks) in history.Marks.OrderBy(m => m.Key, StringComparer.Ordinal))
        {
            json.WriteStartArray(key);
            foreach (var mark in marks)
            {
                json.WriteStartArray();
                json.WriteStringValue(mark.State);
                json.WriteStringValue(mark.Text);
                json.WriteStringValue(mark.Library);
                json.WriteStringValue(mark.Date);
                json.WriteBooleanValue(mark.IsOut);
                json.WriteBooleanValue(mark.IsOffered);
                foreach (var below in mark.Below) json.WriteStringValue(below);
                json.WriteEndArray();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
        json.WriteStartObject("spots");
        foreach (var (key, spot) in history.Spots.OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            json.WriteStartArray(key);
            json.WriteNumberValue(spot.Age);
            json.WriteStringValue(spot.After);
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static HistoryBook Book(JsonElement root)
    {
        var book = new HistoryBook();
        foreach (var hash in root.GetProperty("aside").EnumerateArray()) book.Aside.Add(Text(hash));
        foreach (var record in root.GetProperty("records").EnumerateObject()) book.Records[record.Name] = History(record.Value);
        return book;
    }

    private static RecordHistory History(JsonElement record)
    {
        var type = Words.Parse<RecordType>(Text(record.GetProperty("type"))) ?? throw new FormatException();
        if (record.TryGetProperty("text", out var only)) return RecordHistory.Begin(type, Visible(only), Word(record.GetProperty("library")), Word(record.GetProperty("date")));
        var known = new SortedSet<string>(record.GetProperty("known").EnumerateArray().Select(Text), StringComparer.Ordinal);
        var marks = record.GetProperty("marks").EnumerateObject().ToDictionary(m => m.Name, IReadOnlyList<Mark> (m) => [.. m.Value.EnumerateArray().Select(Mark)], StringComparer.Ordinal);
        var spots = record.GetProperty("spots").EnumerateObject().ToDictionary(s => s.Name, s => new Spot(s.Value[0].GetInt32(), Text(s.Value[1])), StringComparer.Ordinal);
        // A key without lines or a place of its own would be lost when the text is put together.
        if (marks.Any(m => m.Value.Count is 0 or > MostMarks || Keys.Above(Keys.Owner(m.Key)).Count() > Deepest) || !spots.Keys.ToHashSet(StringComparer.Ordinal).SetEquals(marks.Keys.Where(Keys.IsOwn)) || spots.Keys.Any(k => Keys.Last(k).Length == 0)) throw new FormatException();
        return new RecordHistory(type, known, marks, spots);
    }

    private static Mark Mark(JsonElement mark)
    {
        var parts = mark.EnumerateArray().ToList();
        return new Mark(Text(parts[0]), Visible(parts[1]), Word(parts[2]), Word(parts[3]))
        {
            IsOut = parts[4].GetBoolean(), IsOffered = parts[5].GetBoolean(), Below = [.. parts.Skip(6).Select(Text)],
        };
    }

    // What is shown to be chosen from is as clean as what is read from records.
    private static string Visible(JsonElement element) => Text(element) is var text && HiddenCharacters.IndexIn(text) < 0 && !text.Contains('\r', StringComparison.Ordinal) ? text : throw new FormatException();

    private static string Word(JsonElement element) => Text(element) is var word && word.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') ? word : throw new FormatException();

    private static string Text(JsonElement element) => element.GetString() ?? throw new FormatException();
}
