using System.Text;
using System.Text.RegularExpressions;
using Crossref.Core.Records;

namespace Crossref.Site.Sharing;

/// <summary>
/// A file for people that shows between what to choose. No record is read from it: the ending keeps it apart.
/// </summary>
internal static partial class ConflictFile
{
    /// <summary>The folder of all of them, below the content folder.</summary>
    internal const string Folder = "conflicts/";

    private const string Nothing = "(nothing)";
    private const string Margin = "    ";

    /// <summary>The file for a record.</summary>
    internal static string PathOf(RecordType type, string name) => $"{Folder}{Words.Of(type)}-{name.Replace(":", "--", StringComparison.Ordinal)}.txt";

    internal static byte[] Write(Conflict conflict)
    {
        var text = new StringBuilder();
        text.Append("Copies of this record differ. What is in force stands first at each key.\n");
        text.Append("crossref choose puts another of the texts in force and settles it. If something else is right, write it\n");
        text.Append("into the record, then delete this file: that settles it too.\n\n");
        text.Append($"record: {Words.Of(conflict.Type)} {conflict.Name}\n");
        foreach (var key in conflict.Keys)
        {
            text.Append($"\nkey: {key.Key}\n");
            foreach (var choice in key.Choices)
            {
                text.Append($"written: {choice.Date} {choice.Library}\n");
                foreach (var line in (choice.Text ?? Nothing).TrimEnd('\n').Split('\n')) text.Append(Margin).Append(line).Append('\n');
            }
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>What a file says; null when it is not one of ours.</summary>
    internal static Conflict? Read(string path, string text)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n');
        if (lines.Select(l => Record().Match(l)).FirstOrDefault(m => m.Success) is not { } head || Words.Parse<RecordType>(head.Groups["type"].Value) is not { } type) return null;
        var keys = new List<ConflictKey>();
        var choices = new List<ConflictChoice>();
        foreach (var line in lines)
        {
            if (line.StartsWith("key: ", StringComparison.Ordinal) || line == "key:") keys.Add(new ConflictKey(line["key:".Length..].Trim(), choices = []));
            else if (Written().Match(line) is { Success: true } written) choices.Add(new ConflictChoice(null, written.Groups["library"].Value, written.Groups["date"].Value));
            else if (choices.Count > 0 && line.StartsWith(Margin, StringComparison.Ordinal) && line != Margin + Nothing) choices[^1] = choices[^1] with { Text = choices[^1].Text + line[Margin.Length..] + "\n" };
        }
        return new Conflict(type, head.Groups["name"].Value, path, keys);
    }

    [GeneratedRegex("^record: (?<type>[a-z]+) (?<name>[a-z0-9:-]+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Record();

    [GeneratedRegex("^written: (?<date>[0-9-]*) (?<library>[a-z0-9-]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
