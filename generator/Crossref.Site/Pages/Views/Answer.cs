namespace Crossref.Site.Pages.Views;

/// <summary>A position in a list: what fits there, and what of it is in the house.</summary>
public sealed record Answer
{
    /// <summary>The position.</summary>
    public required Link Position { get; init; }
    /// <summary>The best part accepted in any machine; null when there is none.</summary>
    public PartLine? Best { get; init; }
    /// <summary>The word for its standing.</summary>
    public Link? Standing { get; init; }
    /// <summary>How many usable pieces of it there are and where, in a few words.</summary>
    public string InHouse { get; init; } = "";
    /// <summary>What has to be checked first; empty for nothing.</summary>
    public string CheckFirst { get; init; } = "";
    /// <summary>Whether only the maker's document counts.</summary>
    public required bool Safety { get; init; }
    /// <summary>What fits in each machine of the family, where that depends on the machine.</summary>
    public IReadOnlyList<Phrase> ByMachine { get; init; } = [];
    /// <summary>Other accepted parts of which there are pieces in the house.</summary>
    public IReadOnlyList<Phrase> Others { get; init; } = [];

    /// <summary>The answer as text, without the position: two positions with the same text have the same answer.</summary>
    internal string Text => string.Join(
        '|', [Best?.Number.Text, Standing?.Text, InHouse, CheckFirst, Safety ? "safety" : "", .. ByMachine.Concat(Others).Select(p => p.ToString())]);
}
