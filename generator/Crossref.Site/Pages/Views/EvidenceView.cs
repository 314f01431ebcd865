namespace Crossref.Site.Pages.Views;

/// <summary>Everything that is said about one part at a position, or in place of another part.</summary>
public sealed record EvidenceView
{
    /// <summary>The part.</summary>
    public required PartLine Part { get; init; }
    /// <summary>What the statements are about.</summary>
    public required Phrase About { get; init; }
    /// <summary>Statements that say yes, strongest first.</summary>
    public required IReadOnlyList<StatementView> For { get; init; }
    /// <summary>Statements that say no, strongest first.</summary>
    public required IReadOnlyList<StatementView> Against { get; init; }
    /// <summary>Statements that were taken back.</summary>
    public required IReadOnlyList<StatementView> Withdrawn { get; init; }
    /// <summary>What tells yes and no apart.</summary>
    public required IReadOnlyList<string> Splits { get; init; }
    /// <summary>Whether there are both.</summary>
    public required bool Contradicted { get; init; }
}
