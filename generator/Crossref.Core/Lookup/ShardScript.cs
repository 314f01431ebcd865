using System.Globalization;
using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>
/// A shard as a classic script: one call that hands over its name and one string. Plain ASCII, so that no
/// declared encoding matters; a string, because a browser parses it twice as fast as an object.
/// </summary>
internal static class ShardScript
{
    private const string Open = "crossrefLookup(\"";
    private const string Between = "\",\"";
    private const string Close = "\");\n";

    /// <summary>What a script of this name adds to its body, in characters.</summary>
    public static int Overhead(string name) => Open.Length + name.Length + Between.Length + Close.Length;

    /// <summary>The script that hands over a body.</summary>
    public static string Wrap(string name, string body)
    {
        var script = new StringBuilder(body.Length + 64).Append(Open).Append(name).Append(Between);
        foreach (var c in body)
        {
            AppendEscaped(script, c);
        }

        return script.Append(Close).ToString();
    }

    /// <summary>The body of a script.</summary>
    /// <exception cref="LookupFormatException">The script is not one of ours, or is cut short.</exception>
    public static string Unwrap(string script)
    {
        var start = script.IndexOf(Between, StringComparison.Ordinal) + Between.Length;
        if (!script.StartsWith(Open, StringComparison.Ordinal)
            || start < Between.Length
            || !script.EndsWith(Close, StringComparison.Ordinal)
            || script.Length - Close.Length < start)
        {
            throw new LookupFormatException("A file of the lookup index is damaged; build the site again.");
        }

        return Unescape(script.AsSpan(start, script.Length - Close.Length - start));
    }

    /// <summary>How many characters a text takes in the literal.</summary>
    public static int EscapedLength(string text)
    {
        var length = 0;
        foreach (var c in text)
        {
            length += c switch
            {
                '"' or '\\' or '\t' or '\n' => 2,
                >= ' ' and <= '~' => 1,
                _ => 6,
            };
        }

        return length;
    }

    private static void AppendEscaped(StringBuilder script, char c)
    {
        _ = c switch
        {
            '"' or '\\' => script.Append('\\').Append(c),
            '\t' => script.Append("\\t"),
            '\n' => script.Append("\\n"),
            >= ' ' and <= '~' => script.Append(c),
            _ => script.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)),
        };
    }

    private static string Unescape(ReadOnlySpan<char> literal)
    {
        var text = new StringBuilder(literal.Length);
        for (var i = 0; i < literal.Length; i++)
        {
            if (literal[i] != '\\')
            {
                text.Append(literal[i]);
                continue;
            }

            i++;
            if (literal[i] == 'u')
            {
                text.Append((char)int.Parse(literal.Slice(i + 1, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture));
                i += 4;
            }
            else
            {
                text.Append(literal[i] switch { 't' => '\t', 'n' => '\n', var c => c });
            }
        }

        return text.ToString();
    }
}
