using System.Globalization;
using System.Text;

namespace Crossref.Core.Checking;

/// <summary>
/// Characters that nobody sees, that move what stands beside them, or that command a screen. Two part numbers that look
/// alike must be alike, so no record, note or file name holds one. What the scripts and emoji that need joiners need
/// stays: a joiner behind a letter of such a script or behind a sign.
/// </summary>
public static class HiddenCharacters
{
    // Joiners and selectors never stand behind Latin, Greek or Cyrillic letters, nor behind digits.
    private const int FirstJoined = 0x0590;

    /// <summary>Where the first of them stands, counted from 0; -1 when there is none. Tabs and line feeds are none.</summary>
    /// <param name="text">The text.</param>
    /// <param name="from">Where to begin looking.</param>
    public static int IndexIn(ReadOnlySpan<char> text, int from = 0)
    {
        for (var i = from; i < text.Length; i++)
        {
            if (text[i] is >= ' ' and <= '~' or '\t' or '\n') continue;
            if (Rune.DecodeFromUtf16(text[i..], out var rune, out var length) != System.Buffers.OperationStatus.Done) return i;
            if (IsControl(rune) || IsUnseen(rune) && !(IsJoiner(rune) && Joins(text[..i]))) return i;
            i += length - 1;
        }
        return -1;
    }

    /// <summary>Whether the one at an index is a control character or half a character, rather than an unseen one.</summary>
    public static bool IsControlAt(ReadOnlySpan<char> text, int index) => char.IsControl(text[index]) || IsHalf(text, index);

    /// <summary>"a control character (U+0007)" and the like, for the one at an index.</summary>
    public static string Name(ReadOnlySpan<char> text, int index)
    {
        if (IsHalf(text, index)) return string.Create(CultureInfo.InvariantCulture, $"half a character (U+{(int)text[index]:X4})");
        Rune.DecodeFromUtf16(text[index..], out var rune, out _);
        var what = IsControl(rune) ? "a control character" : Turns(rune) ? "a character that turns the direction of writing" : "a character that nobody sees";
        return string.Create(CultureInfo.InvariantCulture, $"{what} (U+{rune.Value:X4})");
    }

    /// <summary>The text with a question mark in place of each of them.</summary>
    public static string Masked(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (IndexIn(text) is var first && first < 0) return text;
        var masked = new StringBuilder(text);
        for (var at = first; at >= 0; at = IndexIn(text, at + 1)) masked[at] = '?';
        return masked.ToString();
    }

    private static bool IsHalf(ReadOnlySpan<char> text, int index) =>
        Rune.DecodeFromUtf16(text[index..], out _, out _) != System.Buffers.OperationStatus.Done;

    private static bool IsControl(Rune rune) => Rune.IsControl(rune) && rune.Value is not ('\t' or '\n');

    // Unicode, Bidirectional Algorithm (UAX 9), section 2: the marks, embeddings, overrides and isolates.
    private static bool Turns(Rune rune) => rune.Value is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    // Unicode, DerivedCoreProperties.txt, Default_Ignorable_Code_Point; then the separators of lines and paragraphs, the
    // empty Braille cell, the marks of annotations, and code points that are no characters.
    private static bool IsUnseen(Rune rune) => rune.Value is 0x00AD or 0x034F or 0x061C or 0x115F or 0x1160 or 0x17B4 or 0x17B5
        or (>= 0x180B and <= 0x180F) or (>= 0x200B and <= 0x200F) or (>= 0x202A and <= 0x202E) or (>= 0x2060 and <= 0x206F)
        or 0x3164 or (>= 0xFE00 and <= 0xFE0F) or 0xFEFF or 0xFFA0 or (>= 0xFFF0 and <= 0xFFF8)
        or (>= 0x1BCA0 and <= 0x1BCA3) or (>= 0x1D173 and <= 0x1D17A) or (>= 0xE0000 and <= 0xE0FFF)
        or 0x2028 or 0x2029 or 0x2800 or (>= 0xFFF9 and <= 0xFFFB) or (>= 0xFDD0 and <= 0xFDEF) || (rune.Value & 0xFFFE) == 0xFFFE;

    private static bool IsJoiner(Rune rune) => rune.Value is 0x200C or 0x200D or (>= 0xFE00 and <= 0xFE0F);

    private static bool Joins(ReadOnlySpan<char> before)
    {
        while (Rune.DecodeLastFromUtf16(before, out var rune, out var length) == System.Buffers.OperationStatus.Done)
        {
            if (!IsJoiner(rune)) return rune.Value >= FirstJoined && IsJoined(Rune.GetUnicodeCategory(rune));
            before = before[..^length];
        }
        return false;
    }

    private static bool IsJoined(UnicodeCategory category) => category is UnicodeCategory.OtherLetter or UnicodeCategory.NonSpacingMark
        or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.OtherSymbol or UnicodeCategory.ModifierSymbol or UnicodeCategory.MathSymbol;
}
