namespace Crossref.Site.Pages.Views;

/// <summary>What fits one position.</summary>
public sealed record PositionView
{
    /// <summary>What the position is.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>Whether only the maker's document counts.</summary>
    public required bool Safety { get; init; }
    /// <summary>Which way round; null when it does not matter or is not on record.</summary>
    public string? Orientation { get; init; }
    /// <summary>The answer in a sentence.</summary>
    public required string Verdict { get; init; }
    /// <summary>What would make an answer where there is none.</summary>
    public required IReadOnlyList<string> WouldChange { get; init; }
    /// <summary>The best accepted part.</summary>
    public CandidateView? Best { get; init; }
    /// <summary>The other accepted parts in a few words each, those in the house first.</summary>
    public required IReadOnlyList<Phrase> InShort { get; init; }
    /// <summary>The other accepted parts.</summary>
    public required IReadOnlyList<CandidateView> Others { get; init; }
    /// <summary>Parts that stand and are no answer here.</summary>
    public required IReadOnlyList<CandidateView> Standing { get; init; }
    /// <summary>Something to try.</summary>
    public required IReadOnlyList<CandidateView> Leads { get; init; }
    /// <summary>Parts of which yes and no are equally strong.</summary>
    public required IReadOnlyList<RefusalView> Disputed { get; init; }
    /// <summary>The page of all disputes.</summary>
    public required Link AllDisputes { get; init; }
    /// <summary>Parts that do not go in.</summary>
    public required IReadOnlyList<RefusalView> RuledOut { get; init; }
    /// <summary>What fits in each machine of the family.</summary>
    public required IReadOnlyList<MachineAnswer> Machines { get; init; }
    /// <summary>Whether the answer is the same in all of them.</summary>
    public required bool SameInAll { get; init; }
    /// <summary>Every statement.</summary>
    public required IReadOnlyList<EvidenceView> Evidence { get; init; }
    /// <summary>Sizes side by side; null when no size decides.</summary>
    public SizeTable? Sizes { get; init; }
    /// <summary>What to know before a cover comes off.</summary>
    public required BenchView Bench { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>Open questions about it.</summary>
    public required IReadOnlyList<Link> Questions { get; init; }
    /// <summary>Repairs here.</summary>
    public required IReadOnlyList<RepairLine> Repairs { get; init; }
    /// <summary>Pictures.</summary>
    public required IReadOnlyList<PictureView> Pictures { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
    /// <summary>The position's address.</summary>
    public required string Address { get; init; }
    /// <summary>The form for a finding, filled in with this place.</summary>
    public required Link Record { get; init; }
}
