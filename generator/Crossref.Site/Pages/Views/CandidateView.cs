using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Views;

/// <summary>A part that may go in, as a page shows it.</summary>
public sealed record CandidateView
{
    /// <summary>The part.</summary>
    public required PartLine Part { get; init; }
    /// <summary>The word for its standing, leading to what that means.</summary>
    public required Link Standing { get; init; }
    /// <summary>Why, in a sentence.</summary>
    public required string Reason { get; init; }
    /// <summary>Where it lies in the house.</summary>
    public required IReadOnlyList<StockLine> Stock { get; init; }
    /// <summary>How many usable pieces there are.</summary>
    public required int InHouse { get; init; }
    /// <summary>What an order takes; null when nothing is known.</summary>
    public string? Order { get; init; }
    /// <summary>What has to be checked first, and when it does not go in.</summary>
    public required IReadOnlyList<string> CheckFirst { get; init; }
    /// <summary>What has to be done to it.</summary>
    public required IReadOnlyList<string> Changes { get; init; }
    /// <summary>The evidence, step by step.</summary>
    public required IReadOnlyList<Phrase> Path { get; init; }
    /// <summary>The same as a figure; null for a path of one step.</summary>
    public Markup? Figure { get; init; }
    /// <summary>Why it is no answer here; null when it is one.</summary>
    public string? WhyNot { get; init; }
}
