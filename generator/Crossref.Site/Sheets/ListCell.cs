using System.Text;

namespace Crossref.Site.Sheets;

/// <summary>Several values in one cell, divided by semicolons; a semicolon that belongs to a value stands behind a backslash.</summary>
internal static class ListCell
{
    /// <summary>Divides the values of a list.</summary>
    internal const char Between = ';';

    /// <summary>Divides the parts of one value.</summary>
    internal const char Within = '|';

    private const char Escape = '\\';

    internal static string Write(IEnumerable<string> values, char divider = Between) =>
        string.Join(divider == Between ? "; " : " | ", values.Select(v => Escaped(v, divider)));

    /// <summary>The values, trimmed, the empty ones left out.</summary>
    internal static IEnumerable<string> Read(string cell, char divider = Between) => Split(cell, divider).Select(v => v.Trim()).Where(v => v.Length > 0);

    private static string Escaped(string value, char divider) =>
        value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(divider.ToString(), $"{Escape}{divider}", StringComparison.Ordinal);

    private static IEnumerable<string> Split(string cell, char divider)
    {
        var value = new StringBuilder();
        for (var i = 0; i < cell.Length; i++)
        {
            if (cell[i] == Escape && i + 1 < cell.Length && (cell[i + 1] == Escape || cell[i + 1] == divider)) value.Append(cell[++i]);
            else if (cell[i] == divider || cell[i] == '\n' && divider == Between)
            {
                yield return value.ToString();
                value.Clear();
            }
            else value.Append(cell[i]);
        }
        yield return value.ToString();
    }
}
