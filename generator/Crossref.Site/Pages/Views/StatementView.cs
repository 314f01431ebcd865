namespace Crossref.Site.Pages.Views;

/// <summary>One statement for or against something.</summary>
public sealed record StatementView
{
    /// <summary>What it says.</summary>
    public required string Says { get; init; }
    /// <summary>What it counts for, leading to what that means.</summary>
    public required Link Basis { get; init; }
    /// <summary>The claim, the repair or the list behind it.</summary>
    public required Link Record { get; init; }
    /// <summary>Why it counts for less than is written.</summary>
    public string? Lowered { get; init; }
    /// <summary>Where it can be read.</summary>
    public Link? Source { get; init; }
    /// <summary>The page or item there.</summary>
    public string? Locator { get; init; }
    /// <summary>Who says so.</summary>
    public string? By { get; init; }
    /// <summary>When.</summary>
    public string? Date { get; init; }
    /// <summary>How long it ran.</summary>
    public string? Run { get; init; }
    /// <summary>The machine it was tried in.</summary>
    public Link? Machine { get; init; }
    /// <summary>The machines it speaks of, when not all.</summary>
    public string? OnlyIf { get; init; }
    /// <summary>What was done to make it fit.</summary>
    public string? Change { get; init; }
    /// <summary>What was seen at the neighbours.</summary>
    public string? Neighbours { get; init; }
    /// <summary>How it failed early.</summary>
    public string? Failure { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
    /// <summary>Why it does not count here; null when it does.</summary>
    public string? Aside { get; init; }
    /// <summary>Whether it was taken back.</summary>
    public bool Struck { get; init; }
}
