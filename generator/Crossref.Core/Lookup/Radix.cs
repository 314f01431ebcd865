using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>
/// Whole numbers as text: five bits to a character, lowest first, and a sixth bit that says more follow.
/// No character of the alphabet needs an escape in a string literal or separates rows.
/// </summary>
internal static class Radix
{
    public const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_";

    private static readonly byte[] Digits = MakeDigits();

    /// <summary>The value of one character of the alphabet, 0 to 63.</summary>
    public static int Digit(char c) =>
        c < Digits.Length && Digits[c] != byte.MaxValue
            ? Digits[c]
            : throw new LookupFormatException("The lookup index is damaged; build the site again.");

    /// <summary>How many characters a number takes.</summary>
    public static int Length(int value)
    {
        var length = 1;
        while ((value >>= 5) != 0)
        {
            length++;
        }

        return length;
    }

    /// <summary>Writes a number that is not negative.</summary>
    public static void Append(StringBuilder text, int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        for (; value >= 32; value >>= 5)
        {
            text.Append(Alphabet[(value & 31) | 32]);
        }

        text.Append(Alphabet[value]);
    }

    /// <summary>Reads the number at a place and moves the place behind it.</summary>
    public static int Read(string text, ref int at)
    {
        var value = 0;
        for (var shift = 0; at < text.Length && shift < 35; shift += 5)
        {
            var digit = Digit(text[at++]);
            value |= (digit & 31) << shift;
            if (digit < 32)
            {
                return value;
            }
        }

        throw new LookupFormatException("The lookup index is damaged; build the site again.");
    }

    private static byte[] MakeDigits()
    {
        var digits = new byte[128];
        Array.Fill(digits, byte.MaxValue);
        for (var i = 0; i < Alphabet.Length; i++)
        {
            digits[Alphabet[i]] = (byte)i;
        }

        return digits;
    }
}
