using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Crossref.Site.Pages;

/// <summary>
/// File and folder names that FAT32, exFAT and Windows take as they are: lower-case letters, digits and dashes, no name
/// of a device. Ids of a checked library pass unchanged unless they are long; anything else gets a name of its own with a hash.
/// </summary>
internal static class SafeName
{
    // A folder, a folder named after an id, a pair of ids and an ending stay below 120 characters together.
    private const int Longest = 44;
    private const int LongestPair = 60;

    private static readonly HashSet<string> Devices = new(
        ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(n => new[] { $"com{n}", $"lpt{n}" })], StringComparer.Ordinal);

    /// <summary>The name for an id.</summary>
    internal static string Of(string id) => IsPlain(id) ? id : Shortened(id, id);

    /// <summary>The name for two ids in one folder. A single dash never joins two, so that no pair can be mistaken for another.</summary>
    internal static string Of(string first, string second)
    {
        var joined = first + "--" + second;
        return joined.Length <= LongestPair && IsPlain(first) && IsPlain(second) ? joined : Shortened(joined, first + "/" + second);
    }

    /// <summary>The beginning of a hash, as many hexadecimal digits as asked for.</summary>
    internal static string Hash(string text, int digits) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..digits];

    // Three dashes, because no other name has them.
    private static string Shortened(string text, string identity)
    {
        var plain = new StringBuilder();
        foreach (var c in text.ToLower(CultureInfo.InvariantCulture))
            if (char.IsAsciiLetterOrDigit(c)) plain.Append(c);
            else if (plain.Length > 0 && plain[^1] != '-') plain.Append('-');
        var start = plain.ToString(0, Math.Min(plain.Length, 30)).Trim('-');
        return (start.Length == 0 ? "x" : start) + "---" + Hash(identity, 10);
    }

    private static bool IsPlain(string name) =>
        name.Length is > 0 and <= Longest && !Devices.Contains(name) && name[0] != '-' && name[^1] != '-' &&
        !name.Contains("--", StringComparison.Ordinal) && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
