using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>Queries of every sort about a library, some of them with filters.</summary>
public static class LargeQueries
{
    private static readonly (string Sort, Func<Random, LookupEntry, string?> Text)[] Sorts =
    [
        ("exact", (_, entry) => Number(entry, NumberRole.Number)),
        ("earlier", (_, entry) => Number(entry, NumberRole.Earlier)),
        ("other maker's", (_, entry) => Number(entry, NumberRole.Also)),
        ("generic", (_, entry) => Number(entry, NumberRole.Generic)),
        ("separators", (random, entry) => Mistyping.Separated(random, Any(random, entry))),
        ("look-alikes", (random, entry) => Mistyping.Lookalikes(random, Any(random, entry))),
        ("prefix", (random, entry) => Any(random, entry) is var number ? number[..random.Next(2, number.Length)] : null),
        ("middle", (random, entry) => Mistyping.Middle(random, Any(random, entry))),
        ("slip: other", (random, entry) => Mistyping.Slip(random, Any(random, entry), "other")),
        ("slip: missing", (random, entry) => Mistyping.Slip(random, Any(random, entry), "missing")),
        ("slip: extra", (random, entry) => Mistyping.Slip(random, Any(random, entry), "extra")),
        ("slip: swap", (random, entry) => Mistyping.Slip(random, Any(random, entry), "swap")),
        ("id", (_, entry) => entry.Id),
        ("word", (random, entry) => Word(random, entry.Title)),
        ("words", (random, entry) => $"{Word(random, entry.Title)} {Word(random, entry.Title + " " + entry.Text)}"),
        ("words begun", (random, entry) => $"{Word(random, entry.Title)} {Word(random, entry.Text)[..3]}"),
        ("common words", (random, entry) => $"{entry.Type} {Word(random, entry.Detail)} {entry.Kind}"),
        ("nickname", (_, entry) => entry.Aliases.Count > 0 ? entry.Aliases[0] : null),
        ("word and piece", (random, entry) => $"{Word(random, entry.Title)} {Mistyping.Middle(random, Any(random, entry))}"),
        ("word and slip", (random, entry) => $"{Mistyping.Slip(random, Any(random, entry), "swap")} {Word(random, entry.Title)}"),
        ("symptom", (random, entry) => entry.Type == "symptom" ? $"{Word(random, entry.Title)} {Word(random, entry.Text)}" : null),
        ("position", (random, entry) => entry.Type == "position" ? $"{Word(random, entry.Title)} {Word(random, entry.Detail)}" : null),
        ("not there", (random, entry) => $"{Word(random, entry.Title)} zyxw{random.Next(100)}"),
        ("filter alone", (_, _) => ""),
    ];

    /// <summary>The names of the sorts.</summary>
    public static IEnumerable<string> Names => Sorts.Select(sort => sort.Sort);

    /// <summary>So many queries, all sorts in turn.</summary>
    public static IReadOnlyList<AskedQuery> Of(IReadOnlyList<LookupEntry> entries, int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(i => Query(random, entries, i))];
    }

    private static AskedQuery Query(Random random, IReadOnlyList<LookupEntry> entries, int i)
    {
        var (sort, textOf) = Sorts[i % Sorts.Length];
        // Symptoms are few: they stand at the end and are drawn from there.
        var from = sort == "symptom" ? entries.Count - TradeWords.Symptoms.Count : 0;
        while (true)
        {
            var meant = entries[random.Next(from, entries.Count)];
            if ((meant.Numbers.Count > 0 || sort is "symptom" or "position") && textOf(random, meant) is { } text)
            {
                var query = new LookupQuery(text) { Limit = i % 5 == 0 ? 20 : i % 7 == 0 ? 1000 : 50 };
                return new AskedQuery(sort, Filtered(query, meant, sort == "filter alone" ? 1 + (i / Sorts.Length % 5) : i / Sorts.Length % 8), meant);
            }
        }
    }

    private static LookupQuery Filtered(LookupQuery query, LookupEntry meant, int turn) => turn switch
    {
        1 => query with { Type = meant.Type },
        2 => query with { Kind = meant.Kind ?? "bearing" },
        3 => query with { Family = meant.Families.Count > 0 ? meant.Families[0] : "velm-a2" },
        4 => query with { Standing = meant.Standing ?? "told" },
        5 => query with { Type = meant.Type, Kind = meant.Kind, Standing = meant.Standing },
        _ => query,
    };

    private static string? Number(LookupEntry entry, NumberRole role) => entry.Numbers.FirstOrDefault(number => number.Role == role)?.Text;

    private static string Any(Random random, LookupEntry entry) => entry.Numbers[random.Next(entry.Numbers.Count)].Text;

    private static string Word(Random random, string text)
    {
        var words = TextFold.Words(text).Where(word => word.Length > 2).ToArray();
        return words[random.Next(words.Length)];
    }
}
