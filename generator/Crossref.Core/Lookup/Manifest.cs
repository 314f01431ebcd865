using System.Globalization;

namespace Crossref.Core.Lookup;

/// <summary>What the first script says: lines of fields parted by tabs.</summary>
internal sealed record Manifest(
    int Entries,
    long Bytes,
    IReadOnlyList<TableShards> Tables,
    IReadOnlyList<FilterValue> Filters)
{
    /// <summary>The shards of a table.</summary>
    public TableShards Table(string name) =>
        Tables.FirstOrDefault(table => table.Table == name) ?? new TableShards(name, []);

    public string Write()
    {
        var lines = new List<string>
        {
            string.Create(CultureInfo.InvariantCulture, $"{IndexFormat.Mark}\t{IndexFormat.Version}\t{Entries}\t{Bytes}"),
        };
        lines.AddRange(Tables.Select(table => $"table\t{table.Table}\t{string.Join(' ', table.FirstKeys)}"));
        lines.AddRange(Filters.Select(filter => string.Create(
            CultureInfo.InvariantCulture, $"filter\t{filter.Filter}\t{filter.Value}\t{filter.Count}")));
        return string.Join('\n', lines);
    }

    /// <exception cref="LookupFormatException">Not an index, or one of another format.</exception>
    public static Manifest Read(string text)
    {
        var lines = text.Split('\n').Select(line => line.Split('\t')).ToList();
        var head = lines[0];
        if (head.Length < 2 || head[0] != IndexFormat.Mark)
        {
            throw new LookupFormatException("This is not a lookup index; build the site again.");
        }

        if (head[1] != IndexFormat.Version.ToString(CultureInfo.InvariantCulture))
        {
            throw new LookupFormatException(
                $"The lookup index has format {head[1]}, and this reader knows format {IndexFormat.Version}. "
                + "Build the site again, so that both come from one version.");
        }

        return new Manifest(
            int.Parse(head[2], CultureInfo.InvariantCulture),
            long.Parse(head[3], CultureInfo.InvariantCulture),
            [.. lines.Where(line => line[0] == "table").Select(line =>
                new TableShards(line[1], line[2].Split(' ', StringSplitOptions.RemoveEmptyEntries)))],
            [.. lines.Where(line => line[0] == "filter").Select(line =>
                new FilterValue(line[1], line[2], int.Parse(line[3], CultureInfo.InvariantCulture)))]);
    }
}
