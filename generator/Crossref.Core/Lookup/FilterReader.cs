namespace Crossref.Core.Lookup;

/// <summary>Reads which entries the filters of a query leave.</summary>
internal sealed class FilterReader(TableReader table, int entries)
{
    /// <summary>A mark for every entry that all filters leave; null when there is no filter.</summary>
    public bool[]? Allowed(LookupQuery query)
    {
        bool[]? allowed = null;
        foreach (var (name, value) in Filters(query))
        {
            var marks = new bool[entries];
            table.WalkKey(IndexFormat.FilterKey(name, value), row =>
            {
                RunCoder.Mark(row.Value, marks);
                return true;
            });
            allowed = allowed is null ? marks : And(allowed, marks);
        }

        return allowed;
    }

    /// <summary>The filters a query sets, by name.</summary>
    public static IEnumerable<(string Name, string Value)> Filters(LookupQuery query) =>
        new[] { ("type", query.Type), ("kind", query.Kind), ("family", query.Family), ("standing", query.Standing) }
            .Where(filter => !string.IsNullOrEmpty(filter.Item2))
            .Select(filter => (filter.Item1, filter.Item2!));

    private static bool[] And(bool[] left, bool[] right) => [.. left.Select((mark, i) => mark && right[i])];
}
