using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>Filters in a library of 20,000 parts leave what a plain look at every entry leaves.</summary>
public class FiltersAtSizeTests(LargeLibraryFixture large) : IClassFixture<LargeLibraryFixture>
{
    [Fact]
    public void A_filter_alone_lists_just_what_it_names()
    {
        var offered = large.Reader.FilterValues.ToList();
        Assert.Equal(["family", "kind", "standing", "type"], offered.Select(value => value.Filter).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(30, offered.Count(value => value.Filter == "family"));
        foreach (var value in offered)
        {
            var query = With(new LookupQuery("") { Limit = 50_000 }, value.Filter, value.Value);
            var expected = large.Entries.Where(entry => Passes(entry, query)).Select(Name).Order(StringComparer.Ordinal).ToList();
            Assert.Equal(value.Count, expected.Count);
            Assert.Equal(expected, large.Reader.Find(query).Select(hit => $"{hit.Type} {hit.Id}").Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void A_filter_takes_away_what_it_does_not_name_and_changes_nothing_else()
    {
        var byName = large.Entries.ToDictionary(Name);
        var (kept, lost) = (0, 0);
        foreach (var asked in LargeQueries.Of(large.Entries, 1200, 5).Where(asked => IsOneTerm(asked.Query.Text)))
        {
            var query = With(asked.Query with { Limit = 50_000 }, "kind", asked.Meant!.Kind);
            var all = large.Reader.Find(new LookupQuery(query.Text) { Limit = 50_000 });
            var expected = all.Where(hit => Passes(byName[$"{hit.Type} {hit.Id}"], query)).Select(Line).ToList();
            Assert.Equal(expected, large.Reader.Find(query).Select(Line));
            (kept, lost) = (kept + expected.Count, lost + all.Count - expected.Count);
        }

        Assert.True(kept > 1000 && lost > 1000, $"{kept} kept, {lost} lost");
    }

    // With several terms a filter may bring up entries that answer fewer of them.
    private static bool IsOneTerm(string text) => text.Length > 0 && !text.Contains(' ', StringComparison.Ordinal);

    private static LookupQuery With(LookupQuery query, string filter, string? value) => filter switch
    {
        "type" => query with { Type = value },
        "kind" => query with { Kind = value },
        "family" => query with { Family = value },
        _ => query with { Standing = value },
    };

    private static bool Passes(LookupEntry entry, LookupQuery query) =>
        (query.Type is null || entry.Type == query.Type)
        && (query.Kind is null || entry.Kind == query.Kind)
        && (query.Standing is null || entry.Standing == query.Standing)
        && (query.Family is null || entry.Families.Contains(query.Family));

    private static string Name(LookupEntry entry) => $"{entry.Type} {entry.Id}";

    private static string Line(LookupHit hit) => $"{hit.Type} {hit.Id} {hit.Score} {hit.Why}";
}
