using System.Text;

namespace Crossref.Core.Arithmetic;

/// <summary>Reads the tables that lie beside their readers as CSV files and are built into the program.</summary>
internal static class EmbeddedTable
{
    /// <summary>The rows below the header line; lines that begin with <c>#</c> are comments.</summary>
    /// <param name="name">The file's name, such as <c>iso286.csv</c>.</param>
    internal static IEnumerable<IReadOnlyList<string>> Rows(string name)
    {
        using var stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream("tables/" + name)
            ?? throw new InvalidOperationException($"The table {name} is not built in.");
        using var reader = new StreamReader(stream);
        var header = true;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#') continue;
            if (!header) yield return Cells(line);
            header = false;
        }
    }

    // A quoted cell may hold commas, and a quote written twice.
    private static List<string> Cells(string line)
    {
        var (cells, cell, quoted) = (new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') cell.Append(line[i++]);
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
