using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>One term of a query: what stands between spaces.</summary>
/// <param name="Typed">As typed.</param>
/// <param name="Form">Its normal form when it has a digit and may be a piece of a number, else empty.</param>
/// <param name="Words">Its words; "fold-head" is two.</param>
/// <param name="Begun">Whether its last word may be only the beginning of one: the typist has come that far.</param>
internal sealed record QueryTerm(string Typed, string Form, IReadOnlyList<string> Words, bool Begun)
{
    private const int MostTerms = 12;
    private const int LongestText = 200;

    /// <summary>What was typed, with every run of white space made one space and none at the ends.</summary>
    public static string Tidy(string text)
    {
        var tidy = new StringBuilder();
        foreach (var c in text)
        {
            if (!IsSpace(c))
            {
                tidy.Append(c);
            }
            else if (tidy.Length > 0 && tidy[^1] != ' ')
            {
                tidy.Append(' ');
            }
        }

        var all = tidy.ToString();
        return (all.Length > LongestText ? all[..LongestText] : all).TrimEnd(' ');
    }

    /// <summary>The terms of a tidy text; those without letter and digit are left out.</summary>
    public static IReadOnlyList<QueryTerm> Of(string tidy)
    {
        var typed = tidy.Split(' ').Where(term => NumberForm.Of(term).Length > 0).Take(MostTerms).ToList();
        return
        [
            .. typed.Select((term, i) =>
            {
                var words = TextFold.Words(term).ToList();
                var hasDigit = words.Exists(word => word.Any(char.IsAsciiDigit));
                return new QueryTerm(term, hasDigit ? NumberForm.Of(term) : "", words, i == typed.Count - 1);
            }),
        ];
    }

    // A fixed list, as in TextFold: what counts as white space must not depend on the platform.
    private static bool IsSpace(char c) =>
        c is <= ' ' or (>= '\u007F' and <= '\u00A0') or (>= '\u2000' and <= '\u200A')
            or '\u2028' or '\u2029' or '\u202F' or '\u3000';
}
