namespace Crossref.Site.Pages.Views;

/// <summary>A symptom: what to check first, then who is suspected.</summary>
public sealed record SymptomView
{
    /// <summary>Where on the paper's way it arises.</summary>
    public required string Where { get; init; }
    /// <summary>What to check first, in order.</summary>
    public required IReadOnlyList<string> Checks { get; init; }
    /// <summary>Roles, most likely first.</summary>
    public required IReadOnlyList<SuspectView> Suspects { get; init; }
    /// <summary>Repairs that began with it.</summary>
    public required IReadOnlyList<RepairLine> Repairs { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}
