using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Views;

/// <summary>A part: its numbers, its sizes, where it fits, what may stand in for it.</summary>
public sealed record PartView
{
    /// <summary>Every number it goes by.</summary>
    public required IReadOnlyList<NumberRow> Numbers { get; init; }
    /// <summary>A dimensioned sketch; null when there are not enough sizes.</summary>
    public Markup? Sketch { get; init; }
    /// <summary>The unit of lengths on the page.</summary>
    public required string Unit { get; init; }
    /// <summary>Sizes on record, then those that decide and are unknown.</summary>
    public required IReadOnlyList<SizeLine> Sizes { get; init; }
    /// <summary>Its deciding sizes beside those of parts that it has to do with; null when there are none.</summary>
    public SizeTable? Beside { get; init; }
    /// <summary>What else is known.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>Whether only the maker's document counts.</summary>
    public required bool Safety { get; init; }
    /// <summary>Positions where it is an answer.</summary>
    public required IReadOnlyList<WhereRow> Fits { get; init; }
    /// <summary>Positions where it stands, but is no answer.</summary>
    public required IReadOnlyList<WhereRow> Stands { get; init; }
    /// <summary>Positions where it may be tried.</summary>
    public required IReadOnlyList<WhereRow> Leads { get; init; }
    /// <summary>Positions where it is disputed or ruled out.</summary>
    public required IReadOnlyList<WhereRow> Refused { get; init; }
    /// <summary>Parts that may go in instead of it.</summary>
    public required IReadOnlyList<StandInRow> StandIns { get; init; }
    /// <summary>Parts that it may go in for.</summary>
    public required IReadOnlyList<StandInRow> StandsInFor { get; init; }
    /// <summary>Parts that may not go in instead of it, or of which that is disputed.</summary>
    public required IReadOnlyList<StandInRow> NotStandIns { get; init; }
    /// <summary>Parts that it may not go in for, or of which that is disputed.</summary>
    public required IReadOnlyList<StandInRow> StandsNotInFor { get; init; }
    /// <summary>The answer to the first question, in a few words each.</summary>
    public required IReadOnlyList<Pair> Glance { get; init; }
    /// <summary>Where it lies in the house.</summary>
    public required IReadOnlyList<StockLine> Stock { get; init; }
    /// <summary>What is on the way.</summary>
    public required IReadOnlyList<Phrase> OnOrder { get; init; }
    /// <summary>What a kit holds.</summary>
    public required IReadOnlyList<Phrase> Contains { get; init; }
    /// <summary>Kits that hold it.</summary>
    public required IReadOnlyList<Link> Kits { get; init; }
    /// <summary>Everything that was claimed of it, newest first.</summary>
    public required IReadOnlyList<ClaimLine> Claims { get; init; }
    /// <summary>Repairs that put it in or took it out.</summary>
    public required IReadOnlyList<RepairLine> Repairs { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>Open questions about it.</summary>
    public required IReadOnlyList<Link> Questions { get; init; }
    /// <summary>Pictures.</summary>
    public required IReadOnlyList<PictureView> Pictures { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}
