using System.Security.Cryptography;
using System.Text;

namespace Crossref.Core.Storing;

/// <summary>
/// What a change that was decided consists of: a line for each file with the hash it shall have, or <c>-</c> where it
/// goes away. The first line is the hash of the others, so that a cut or altered journal is never followed.
/// </summary>
internal static class StoreJournal
{
    private const string Nothing = "-";

    internal static byte[] Format(IEnumerable<FileChange> changes)
    {
        var lines = string.Concat(changes.Select(c => $"{(c.Content is { } bytes ? Hash(bytes) : Nothing)}  {c.Path}\n"));
        return Encoding.UTF8.GetBytes(Hash(Encoding.UTF8.GetBytes(lines)) + "\n" + lines);
    }

    /// <summary>The files and their hashes, null where one goes away; null for a journal that cannot be believed.</summary>
    internal static IReadOnlyList<(string Path, string? Hash)>? Read(byte[] journal)
    {
        var text = Encoding.UTF8.GetString(journal);
        var first = text.IndexOf('\n', StringComparison.Ordinal);
        if (first < 0 || text[..first] != Hash(Encoding.UTF8.GetBytes(text[(first + 1)..]))) return null;
        return [.. text[(first + 1)..].Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Step)];
    }

    internal static string Hash(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private static (string, string?) Step(string line)
    {
        var space = line.IndexOf(' ', StringComparison.Ordinal);
        return (line[(space + 2)..], line[..space] == Nothing ? null : line[..space]);
    }
}
