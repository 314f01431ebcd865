using System.Text.RegularExpressions;

namespace Crossref.Site.Recording;

/// <summary>
/// One line of a repair as it is typed: <c>roller-2-bearing-rear=brg-vm-0907,from=b-2025-120</c>. A comma separates only
/// where a word and an equals sign follow, so that text may hold commas.
/// </summary>
/// <param name="Position">What it is about: a position, or the assembly of a swap.</param>
/// <param name="Value">What stands behind the first equals sign; null when there is none.</param>
/// <param name="More">The other words and what they say.</param>
public sealed partial record RepairLine(string Position, string? Value, IReadOnlyDictionary<string, string> More)
{
    /// <summary>Takes a line apart. A word that is given twice counts once, the last one.</summary>
    public static RepairLine Read(string line)
    {
        var pieces = Comma().Split(line).Select(p => p.Split('=', 2)).ToList();
        var more = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var piece in pieces.Skip(1)) more[piece[0].Trim()] = piece[1].Trim();
        return new RepairLine(pieces[0][0].Trim(), pieces[0].Length > 1 ? pieces[0][1].Trim() : null, more);
    }

    /// <summary>What a word says; null when it is not there.</summary>
    public string? this[string word] => More.GetValueOrDefault(word);

    [GeneratedRegex(",(?=[a-z-]+=)", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();
}
