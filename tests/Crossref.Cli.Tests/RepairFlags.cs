using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Crossref.Cli.Tests;

/// <summary>The flags that say what a repair's text says.</summary>
internal static partial class RepairFlags
{
    private static readonly string[] OfBags = ["grade", "bin", "defect"];

    internal static string[] Of(JsonNode json)
    {
        var flags = new List<string>();
        var bags = json["also"]!.AsArray().ToDictionary(b => (string)b!["id"]!, b => ((string)b!["text"]!).Split('\n').Where(l => l.Contains(": ", StringComparison.Ordinal)).ToDictionary(l => l.Split(": ", 2)[0], l => Plain(l.Split(": ", 2)[1])));
        var list = "";
        foreach (var line in ((string)json["text"]!).TrimEnd('\n').Split('\n').Skip(1))
        {
            if (line.EndsWith(':')) list = line[..^1];
            else if (line.StartsWith("  - ", StringComparison.Ordinal)) flags.AddRange(["--" + list, Line(Map(line), bags)]);
            else if (line.StartsWith("swapped", StringComparison.Ordinal)) flags.AddRange(["--swapped", string.Join(",", Map(line).Select((p, i) => i == 0 ? p.Value : $"{p.Key}={p.Value}"))]);
            else if (line.Split(": ", 2) is [var field, var text] && field != "date") flags.AddRange(["--" + field, Plain(text)]);
        }
        return [.. flags];
    }

    private static string Line(List<KeyValuePair<string, string>> words, Dictionary<string, Dictionary<string, string>> bags)
    {
        var line = $"{words[0].Value}={words[1].Value}";
        foreach (var (word, says) in words.Skip(2))
        {
            if (word != "to" || !bags.TryGetValue(says, out var bag)) line += $",{word}={says}";
            else line += ",to=bag" + string.Concat(OfBags.Where(bag.ContainsKey).Select(w => $",{w}={bag[w]}"));
        }
        return line;
    }

    private static List<KeyValuePair<string, string>> Map(string line) =>
        [.. Pair().Matches(line[(line.IndexOf('{', StringComparison.Ordinal) + 1)..]).Select(m => KeyValuePair.Create(m.Groups["word"].Value, Plain(m.Groups["says"].Value)))];

    private static string Plain(string text) => text[0] == '"' ? text[1..^1].Replace("\\\"", "\"", StringComparison.Ordinal) : text.Trim('{', '}');

    [GeneratedRegex("(?<word>[a-z-]+): (?<says>\"([^\"\\\\]|\\\\.)*\"|\\{[^}]*\\}|[^,}]+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Pair();
}
