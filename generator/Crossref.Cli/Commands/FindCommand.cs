using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;
using Crossref.Core.Lookup;
using Crossref.Site.Pages;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref find</c>: lookup, on the same index and ranking as the site.</summary>
internal static class FindCommand
{
    private const int Most = 50;
    private const int MostOnScreen = 15;

    internal static Command Create(CommonOptions options)
    {
        var text = new Argument<string[]>("TEXT") { Description = "A number or a piece of one, words, a symptom", Arity = ArgumentArity.OneOrMore };
        var command = new Command("find", "Look up parts, positions, symptoms and everything else by number or words.") { text };
        command.SetAction(parsed =>
        {
            if (Workspace.Open(options, parsed).LibraryOrErrors(parsed) is not { } library) return ExitCode.Findings;
            var query = string.Join(' ', parsed.GetValue(text)!);
            if (string.IsNullOrWhiteSpace(query)) throw new CannotRunException("Nothing to look up.", "Write a number or a piece of one, or words: crossref find squeal.");
            var hits = new LookupReader(LookupIndex.Build(LookupEntries.Of(library, new PageMap(library))).Text).Find(new LookupQuery(query) { Limit = Most });
            if (options.Json(parsed)) JsonPrinter.Print(ToJson(query, hits), parsed.InvocationConfiguration.Output);
            else Print(query, hits, parsed.InvocationConfiguration.Output);
            return ExitCode.Fine;
        });
        return command;
    }

    private static JsonObject ToJson(string query, IReadOnlyList<LookupHit> hits) => new()
    {
        ["query"] = query,
        ["results"] = JsonPrinter.Array(hits, h => new JsonObject
        {
            ["type"] = h.Type,
            ["id"] = h.Id,
            ["title"] = h.Title,
            ["why"] = h.Why,
            ["score"] = h.Score,
            ["page"] = h.Page,
        }),
    };

    private static void Print(string query, IReadOnlyList<LookupHit> hits, TextWriter output)
    {
        if (hits.Count == 0) output.WriteLine($"Nothing matches {query}.");
        foreach (var hit in hits.Take(MostOnScreen))
        {
            output.WriteLine($"{hit.Title}  ({hit.Type} {hit.Id})");
            output.WriteLine($"    {hit.Why}");
        }
        if (hits.Count > MostOnScreen) output.WriteLine($"... and {(hits.Count == Most ? "at least " : "")}{hits.Count - MostOnScreen} more; --json prints them.");
    }
}
