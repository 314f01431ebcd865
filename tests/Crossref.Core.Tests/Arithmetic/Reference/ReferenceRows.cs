using Crossref.Core.Tests.Conventions;

namespace Crossref.Core.Tests.Arithmetic.Reference;

/// <summary>Tables of published check values, each row with the place it was read at.</summary>
internal static class ReferenceRows
{
    /// <summary>The rows of a table beside this file, by column.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Of(string file)
    {
        var lines = File.ReadLines(Path.Combine(Repository.Root, "tests", "Crossref.Core.Tests", "Arithmetic", "Reference", file))
            .Where(l => l.Length > 0 && l[0] != '#').Select(Cells).ToList();
        return [.. lines.Skip(1).Select(l => lines[0].Zip(l).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal))];
    }

    // Every other piece between quotes is a quoted one.
    private static List<string> Cells(string line)
    {
        var pieces = line.Replace("\"\"", "\u0001", StringComparison.Ordinal).Split('"');
        for (var i = 1; i < pieces.Length; i += 2) pieces[i] = pieces[i].Replace(',', '\u0002');
        return [.. string.Concat(pieces).Split(',').Select(c => c.Replace('\u0001', '"').Replace('\u0002', ','))];
    }
}
