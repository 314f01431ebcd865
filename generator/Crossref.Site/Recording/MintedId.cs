using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Crossref.Site.Recording;

/// <summary>
/// Ids of records that the tool makes: <c>2026-02-11-ferry-lane-k3f9</c>. The last four follow from what the record
/// says, so that the same finding recorded twice is one record.
/// </summary>
internal static partial class MintedId
{
    // Without 0 o 1 i l, which are read for one another.
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const int LongestLibrary = 24;

    /// <summary>The id for a text, and another one for each time that it was taken by other words.</summary>
    internal static string Of(DateOnly date, string library, string text, int taken)
    {
        // FNV-1a, 32 bits, over UTF-8: a page of the site works out the same in a few lines.
        var hash = 2166136261u;
        foreach (var b in Encoding.UTF8.GetBytes(taken == 0 ? text : string.Create(CultureInfo.InvariantCulture, $"{text}{taken}\n")))
            hash = unchecked((hash ^ b) * 16777619u);
        Span<char> last = stackalloc char[4];
        for (var i = 3; i >= 0; i--, hash /= (uint)Letters.Length) last[i] = Letters[(int)(hash % (uint)Letters.Length)];
        return string.Create(CultureInfo.InvariantCulture, $"{date:yyyy-MM-dd}-{Owner(library)}-{last}");
    }

    /// <summary>The library that an id names as its owner; null when it is not of this form.</summary>
    internal static string? OwnerOf(string id) => Form().Match(id) is { Success: true } match ? match.Groups["library"].Value : null;

    /// <summary>A library's id as ids carry it, so that they stay within forty characters.</summary>
    internal static string Owner(string library) => library.Length <= LongestLibrary ? library : library[..LongestLibrary].TrimEnd('-');

    [GeneratedRegex("^[0-9]{4}-[0-9]{2}-[0-9]{2}-(?<library>.+)-[a-z0-9]{4}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
