using System.Text.Json;
using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Lookup;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>The answers of the two readers, everything a hit says on one line, ready for comparing.</summary>
internal static class ReaderPair
{
    /// <summary>What the command line's reader answers.</summary>
    public static List<List<string>> Answers(LookupReader reader, IReadOnlyList<LookupQuery> queries) =>
        [.. queries.Select(query => reader.Find(query).Select(hit => Line(query, hit)).ToList())];

    /// <summary>What the script answers on a page of a <see cref="LookupSite"/>.</summary>
    public static async Task<List<List<string>>> ScriptAnswersAsync(ITab tab, IReadOnlyList<LookupQuery> queries, bool wholeLoad)
    {
        var read = await tab.AskAsync<JsonElement>(
            """
            (async ([queries, wholeLoad]) => {
              const reader = await crossrefLookup.open("../");
              if (wholeLoad) await reader.loadAll();
              const found = [];
              for (const query of queries) found.push(await reader.find(query));
              return found;
            })(it)
            """,
            new object[] { queries.Select(AsScriptQuery).ToArray(), wholeLoad });
        return [.. read.EnumerateArray().Select((hits, i) => hits.EnumerateArray().Select(hit => Line(queries[i], hit)).ToList())];
    }

    private static object AsScriptQuery(LookupQuery query) => new
    {
        text = query.Text,
        limit = query.Limit,
        type = query.Type,
        kind = query.Kind,
        family = query.Family,
        standing = query.Standing,
    };

    private static string Line(LookupQuery query, LookupHit hit) => Line(
        query, hit.Type, hit.Id, hit.Title, hit.Why, $"{hit.Score}", hit.Page, hit.Detail, hit.Kind, string.Join('+', hit.Families), hit.Standing);

    private static string Line(LookupQuery query, JsonElement hit) => Line(
        query,
        Text(hit, "type"),
        Text(hit, "id"),
        Text(hit, "title"),
        Text(hit, "why"),
        Text(hit, "score"),
        Text(hit, "page"),
        Text(hit, "detail"),
        Text(hit, "kind"),
        string.Join('+', hit.GetProperty("families").EnumerateArray().Select(family => family.GetString())),
        Text(hit, "standing"));

    private static string? Text(JsonElement hit, string name) =>
        hit.GetProperty(name) is { ValueKind: not JsonValueKind.Null } value ? value.ToString() : null;

    private static string Line(LookupQuery query, params string?[] fields) => $"{query.Text} > {string.Join(" | ", fields)}";
}
