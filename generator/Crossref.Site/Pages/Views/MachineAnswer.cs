namespace Crossref.Site.Pages.Views;

/// <summary>What fits a position in one machine.</summary>
public sealed record MachineAnswer
{
    /// <summary>The machine.</summary>
    public required Link Machine { get; init; }
    /// <summary>Its model, serial and mains.</summary>
    public required string Facts { get; init; }
    /// <summary>The best accepted part; null when there is none.</summary>
    public required CandidateView? Best { get; init; }
    /// <summary>What of it is in the house, in a few words.</summary>
    public required string Stock { get; init; }
    /// <summary>Whether the answer is the one for any machine.</summary>
    public required bool Same { get; init; }
    /// <summary>What is different in this machine.</summary>
    public required IReadOnlyList<Phrase> Notes { get; init; }
}
