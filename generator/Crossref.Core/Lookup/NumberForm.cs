namespace Crossref.Core.Lookup;

/// <summary>
/// The normal form of a part number: upper case, separators dropped, O read as 0 and I and L as 1,
/// because worn print and tired eyes do not tell these apart.
/// </summary>
public static class NumberForm
{
    /// <summary>Longer normal forms are cut to this many characters.</summary>
    public const int Longest = 200;

    /// <summary>The normal form of a number or of a piece of one; empty when it has no letter or digit.</summary>
    public static string Of(string text)
    {
        var folded = TextFold.Fold(text);
        Span<char> form = stackalloc char[Longest];
        var length = 0;
        foreach (var c in folded)
        {
            if (c != ' ' && length < Longest)
            {
                form[length++] = Normal(c);
            }
        }

        return new string(form[..length]);
    }

    private static char Normal(char folded) => folded switch
    {
        'o' => '0',
        'i' or 'l' => '1',
        >= 'a' and <= 'z' => (char)(folded - 32),
        _ => folded,
    };
}
