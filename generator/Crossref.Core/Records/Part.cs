namespace Crossref.Core.Records;

/// <summary>A part, as a maker numbers it.</summary>
public sealed record Part : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Part;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>Decides which sizes matter.</summary>
    public required PartKind Kind { get; init; }
    /// <summary>The name pages show.</summary>
    public required string Name { get; init; }
    /// <summary>Who makes it; null when nobody knows.</summary>
    public string? Maker { get; init; }
    /// <summary>Numbers moulded or printed on it; the first is the current one.</summary>
    public IReadOnlyList<Ref> Numbers { get; init; } = [];
    /// <summary>Older numbers of the same part.</summary>
    public IReadOnlyList<Ref> EarlierNumbers { get; init; } = [];
    /// <summary>The same part under other makers' numbers.</summary>
    public IReadOnlyList<AlsoNumber> Also { get; init; } = [];
    /// <summary>What people call it.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
    /// <summary>A different part that the maker sends instead; one way.</summary>
    public Ref? SupersededBy { get; init; }
    /// <summary>Where numbers and supersession were read.</summary>
    public Ref? Source { get; init; }
    /// <summary>Generic designation, such as 6001-2RS.</summary>
    public string? Standard { get; init; }
    /// <summary>Sizes on record, by attribute.</summary>
    public IReadOnlyDictionary<string, Size> Sizes { get; init; } = Nothing.Sizes;
    /// <summary>Which way round matters.</summary>
    public bool Handed { get; init; }
    /// <summary>Left or right, for a part that has a mirror.</summary>
    public string? Hand { get; init; }
    /// <summary>The part of the other hand.</summary>
    public Ref? Mirror { get; init; }
    /// <summary>What a kit holds.</summary>
    public IReadOnlyList<KitItem> Contains { get; init; } = [];
    /// <summary>Normal life; null when unknown.</summary>
    public Count? Life { get; init; }
    /// <summary>Price in the shop's currency; null when unknown.</summary>
    public decimal? Price { get; init; }
    /// <summary>Days from order to door; null when unknown.</summary>
    public decimal? LeadDays { get; init; }
    /// <summary>Marked as a safety part. See <see cref="IsSafety"/> for the whole rule.</summary>
    public bool Safety { get; init; }
    /// <summary>Whether this is a safety part: by its kind or because it is marked.</summary>
    public bool IsSafety => Safety || Kind.Safety;
    /// <summary>Pictures.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
    /// <summary>Every number the part goes by: current, earlier, and other makers'.</summary>
    public IEnumerable<string> AllNumbers => Numbers.Concat(EarlierNumbers).Concat(Also.Select(a => a.Number)).Select(n => n.Id);
    /// <summary>The number to ask for, or the id when the part has none.</summary>
    public string CurrentNumber => Numbers.Count > 0 ? Numbers[0].Id : Id;
}
