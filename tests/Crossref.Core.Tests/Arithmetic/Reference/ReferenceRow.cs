using System.Globalization;
using Crossref.Core.Tests.Conventions;

namespace Crossref.Core.Tests.Arithmetic.Reference;

/// <summary>One row of published check values in this folder, by the names of its columns. Prints itself, its source included.</summary>
internal sealed class ReferenceRow
{
    private readonly string _text;
    private readonly Dictionary<string, string> _cells;

    private ReferenceRow(string text, Dictionary<string, string> cells) => (_text, _cells) = (text, cells);

    internal string this[string column] => _cells[column];

    internal double Number(string column) => double.Parse(_cells[column], CultureInfo.InvariantCulture);

    /// <summary>"d=47;dT=80" as numbers by their names; what is no number counts as no number.</summary>
    internal IReadOnlyDictionary<string, double> Given => _cells["given"].Split(';').Select(p => p.Split('='))
        .ToDictionary(p => p[0], p => double.Parse(p[1], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    internal static IReadOnlyList<ReferenceRow> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "Crossref.Core.Tests", "Arithmetic", "Reference", file)).Where(l => !l.StartsWith('#')).ToList();
        var header = lines[0].Split(',');
        return [.. lines.Skip(1).Select(l => new ReferenceRow(l, Cells(l).Select((c, i) => (c, i)).ToDictionary(c => header[c.i], c => c.c, StringComparer.Ordinal)))];
    }

    public override string ToString() => _text;

    // Commas inside double quotes stay; a quote inside is written twice.
    private static List<string> Cells(string line)
    {
        var cells = new List<string> { "" };
        var pieces = line.Replace("\"\"", "\u0001", StringComparison.Ordinal).Split('"');
        for (var i = 0; i < pieces.Length; i++)
        {
            var parts = i % 2 == 1 ? [pieces[i]] : pieces[i].Split(',');
            cells[^1] += parts[0];
            cells.AddRange(parts.Skip(1));
        }
        return [.. cells.Select(c => c.Replace('\u0001', '"'))];
    }
}
