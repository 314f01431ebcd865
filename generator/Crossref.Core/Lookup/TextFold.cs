using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>
/// Folds text so that differences nobody types on purpose do not count: case, accents, punctuation.
/// Works by its own small table, not by the platform's, because the browser's reader must fold alike
/// whatever edition of Unicode either platform carries.
/// </summary>
public static class TextFold
{
    /// <summary>Longer words are cut to this many characters.</summary>
    public const int LongestWord = 40;

    // The letters U+00C0 to U+017F in order: what each becomes, and how many in a row become the same.
    private const string LatinRuns =
        "a6 ae1 c1 e4 i4 d1 n1 o5 x1 o1 u4 y1 th1 ss1 a6 ae1 c1 e4 i4 d1 n1 o5 -1 o1 u4 y1 th1 y1 " +
        "a6 c8 d4 e10 g8 h4 i10 ij2 j2 k3 l10 n9 o6 oe2 r6 s8 t6 u12 w2 y3 z6 s1";

    private static readonly string[] Latin = [.. LatinRuns.Split(' ').SelectMany(Expand)];

    /// <summary>The text with every letter folded and every run of other characters made one space or none.</summary>
    public static string Fold(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            Append(folded, c);
        }

        return folded.ToString();
    }

    /// <summary>The words of a text, folded, in order.</summary>
    public static IEnumerable<string> Words(string text) =>
        Fold(text)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Length > LongestWord ? word[..LongestWord] : word);

    private static void Append(StringBuilder folded, char c)
    {
        switch (c)
        {
            case (>= 'a' and <= 'z') or (>= '0' and <= '9'):
                folded.Append(c);
                return;
            case >= 'A' and <= 'Z':
                folded.Append((char)(c + 32));
                return;
            case >= '\u00C0' and <= '\u017F':
                folded.Append(Latin[c - 0xC0]);
                return;
            case '\u00B2' or '\u00B3':
                folded.Append((char)(c - 0x80));
                return;
            case '\u00B9':
                folded.Append('1');
                return;
            case '\u00B5':
                folded.Append('u');
                return;
            case >= '\uFF01' and <= '\uFF5E': // wide forms of ASCII
                Append(folded, (char)(c - 0xFEE0));
                return;
            case (>= '\u0300' and <= '\u036F') or '\u00AD' or (>= '\u200B' and <= '\u200D') or '\uFEFF':
                return; // joined accents and invisible characters stand inside words
            default:
                folded.Append(IsLetter(c) ? Lower(c) : ' ');
                return;
        }
    }

    // Whole blocks rather than classes of characters, which change from one edition of Unicode to the next.
    private static bool IsLetter(char c) =>
        c is (>= '\u0180' and <= '\u02FF') or (>= '\u0370' and <= '\u1FFF') or (>= '\u2C00' and <= '\u2DFF')
            or (>= '\u3040' and <= '\uDFFF') or (>= '\uF900' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE');

    private static char Lower(char c) => c switch
    {
        '\u03C2' => '\u03C3', // the sigma that ends a word
        (>= '\u0391' and <= '\u03A1') or (>= '\u03A3' and <= '\u03A9') or (>= '\u0410' and <= '\u042F') => (char)(c + 32),
        >= '\u0400' and <= '\u040F' => (char)(c + 80),
        >= '\u0531' and <= '\u0556' => (char)(c + 48),
        _ => c,
    };

    private static IEnumerable<string> Expand(string run)
    {
        var letters = run.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        var count = int.Parse(run.AsSpan(letters.Length), System.Globalization.CultureInfo.InvariantCulture);
        return Enumerable.Repeat(letters == "-" ? " " : letters, count);
    }
}
