using System.Text;

namespace Crossref.Core.Arithmetic;

/// <summary>A table that is kept as a CSV file beside its reader and travels inside the program.</summary>
internal static class EmbeddedTable
{
    /// <summary>The rows in file order, without comments (lines that begin with #) and the header line.</summary>
    /// <param name="name">The file's name, such as <c>bearings.csv</c>.</param>
    /// <exception cref="FileNotFoundException">No such table is built in.</exception>
    internal static IEnumerable<IReadOnlyList<string>> Rows(string name)
    {
        using var stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream("tables/" + name)
            ?? throw new FileNotFoundException($"The table {name} is not built in.", name);
        using var reader = new StreamReader(stream);
        var header = true;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#') continue;
            if (!header) yield return Cells(line);
            header = false;
        }
    }

    // A cell in double quotes may hold commas; two double quotes in it are one.
    internal static List<string> Cells(string line)
    {
        var (cells, cell, quoted) = (new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') cell.Append(line[++i]);
            else if (line[i] == '"') quoted = !quoted;
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else cell.Append(line[i]);
        }
        cells.Add(cell.ToString());
        return cells;
    }
}
