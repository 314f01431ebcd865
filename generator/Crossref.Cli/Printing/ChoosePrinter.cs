using System.Text.Json.Nodes;
using Crossref.Cli.Commands;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Cli.Printing;

/// <summary>Prints what is open to be chosen, and what was chosen.</summary>
internal static class ChoosePrinter
{
    private const string Nothing = "(nothing)";

    internal static void Print(IReadOnlyList<Conflict> open, IReadOnlyList<Chosen> chosen, bool isDryRun, TextWriter output)
    {
        foreach (var one in chosen)
        {
            output.WriteLine($"{Name(one.Record)}, {CombineGroups.Name(one.Key.Key)}: text {one.Number} is {(isDryRun ? "what would be in force" : "in force now")}.");
            foreach (var line in Text(one.Key.Choices[one.Number - 1])) output.WriteLine("    " + line);
        }
        if (chosen.Count > 0)
        {
            if (isDryRun) output.WriteLine("Nothing was written. Leave --dry-run out to do it.");
            output.WriteLine(open.Count == 0 ? "Nothing is open." : $"Still open: {string.Join("; ", open.SelectMany(c => c.Keys.Select(k => $"{Name(c)}, {CombineGroups.Name(k.Key)}")))}.");
            return;
        }
        foreach (var conflict in open)
        {
            foreach (var key in conflict.Keys)
            {
                foreach (var line in Lines(conflict, key)) output.WriteLine(line);
                output.WriteLine();
            }
        }
        output.WriteLine(open.Count == 0 ? "Nothing is open." : $"To put a text in force: crossref choose {open[0].Name} \"{CombineGroups.Name(open[0].Keys[0].Key)}\" 1, or another number.");
    }

    /// <summary>What there is to choose from at one key.</summary>
    internal static IEnumerable<string> Lines(Conflict conflict, ConflictKey key)
    {
        yield return $"{Name(conflict)}: {CombineGroups.Name(key.Key)}";
        for (var i = 0; i < key.Choices.Count; i++)
        {
            var (_, library, date) = key.Choices[i];
            var where = string.Concat(library.Length > 0 ? $", written in {library}" : "", date.Length > 0 ? $", noted {date}" : "");
            yield return FormattableString.Invariant($"  {i + 1}{(i == 0 ? "  in force until you choose" : "  kept aside")}{where}");
            foreach (var line in Text(key.Choices[i])) yield return "       " + line;
        }
    }

    /// <summary>The first line of a text.</summary>
    internal static string First(ConflictChoice choice) => Text(choice)[0];

    internal static JsonObject ToJson(IReadOnlyList<Conflict> open, IReadOnlyList<Chosen> chosen, IReadOnlyList<FileChange> changes, IReadOnlyList<Diagnostic> after, bool isWritten) => DiagnosticPrinter.AddTo(
        new JsonObject
        {
            ["open"] = JsonPrinter.Array(open.SelectMany(c => c.Keys.Select(k => (c, k))), o => new JsonObject
            {
                ["type"] = Words.Of(o.c.Type),
                ["id"] = o.c.Name,
                ["key"] = o.k.Key,
                ["file"] = o.c.File,
                ["texts"] = JsonPrinter.Array(o.k.Choices.Select((choice, i) => (choice, i)), t => new JsonObject
                {
                    ["number"] = t.i + 1, ["text"] = t.choice.Text, ["library"] = t.choice.Library, ["date"] = t.choice.Date, ["inForce"] = t.i == 0,
                }),
            }),
            ["chosen"] = JsonPrinter.Array(chosen, c => new JsonObject
            {
                ["type"] = Words.Of(c.Record.Type), ["id"] = c.Record.Name, ["key"] = c.Key.Key, ["number"] = c.Number, ["text"] = c.Key.Choices[c.Number - 1].Text,
            }),
            ["written"] = isWritten,
            ["files"] = JsonPrinter.Array(changes.Select(c => c.Path)),
        },
        after);

    private static string Name(Conflict conflict) => $"{Words.Of(conflict.Type)} {conflict.Name}";

    private static string[] Text(ConflictChoice choice) => (choice.Text ?? Nothing).TrimEnd('\n').Split('\n');
}
