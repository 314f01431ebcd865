using System.Text;

namespace Crossref.Site.Writing;

/// <summary>
/// A list of files with their hashes, line by line as <c>sha256sum -c</c> reads it. While files are being exchanged a
/// path stands in it twice, with the old and the new hash, so that an interrupted exchange never passes for a whole one.
/// </summary>
internal static class FileList
{
    private const int HashLength = 64;

    internal static byte[] Format(IEnumerable<(string Path, string Hash)> files) => Encoding.UTF8.GetBytes(string.Concat(
        files.Distinct().OrderBy(f => f.Path, StringComparer.Ordinal).ThenBy(f => f.Hash, StringComparer.Ordinal).Select(f => $"{f.Hash}  {f.Path}\n")));

    /// <summary>The files of a list; lines that are none are left out, and so are paths that do not lead straight down.</summary>
    internal static ILookup<string, string> Read(byte[] list) => Encoding.UTF8.GetString(list).Split('\n')
        .Where(line => line.Length > HashLength + 2 && line[..HashLength].All(char.IsAsciiHexDigit) && line.AsSpan(HashLength, 2).SequenceEqual("  ") && LeadsDown(line[(HashLength + 2)..]))
        .ToLookup(line => line[(HashLength + 2)..], line => line[..HashLength].ToLowerInvariant(), StringComparer.Ordinal);

    // A list that was tampered with must not lead out of the folder.
    private static bool LeadsDown(string path) =>
        path.Split('/').All(name => name.Length > 0 && name is not ("." or "..")) && path.IndexOfAny(['\\', ':', '\0']) < 0;
}
