using Crossref.Core.Quantities;

namespace Crossref.Core.Records;

/// <summary>One place in an assembly where a part goes. Each side is a position of its own.</summary>
public sealed record Position
{
    /// <summary>Id within the assembly.</summary>
    public required string Id { get; init; }
    /// <summary>The family it belongs to.</summary>
    public required string Family { get; init; }
    /// <summary>The assembly it belongs to, by its id within the family.</summary>
    public required string Assembly { get; init; }
    /// <summary>family/assembly/position.</summary>
    public string Address => $"{Family}/{Assembly}/{Id}";
    /// <summary>Where it is written.</summary>
    public required Place Place { get; init; }
    /// <summary>The name pages show.</summary>
    public required string Name { get; init; }
    /// <summary>What kind of part goes here.</summary>
    public required PartKind Kind { get; init; }
    /// <summary>The job it does, the same word in every family; null when not stated.</summary>
    public string? Role { get; init; }
    /// <summary>Identical places done together, 1 or more.</summary>
    public int Quantity { get; init; } = 1;
    /// <summary>What the maker's own list names.</summary>
    public IReadOnlyList<Listing> Listed { get; init; } = [];
    /// <summary>Where the listing was read.</summary>
    public Ref? Source { get; init; }
    /// <summary>Page or item in the source.</summary>
    public string? Locator { get; init; }
    /// <summary>Which way round the part goes in.</summary>
    public IReadOnlyDictionary<string, string> Orientation { get; init; } = Nothing.Texts;
    /// <summary>Addresses of positions that suffer next when this one fails.</summary>
    public IReadOnlyList<Ref> DamagesNext { get; init; } = [];
    /// <summary>Addresses of positions that break easily while this one is reached.</summary>
    public IReadOnlyList<Ref> BreaksWhenOpened { get; init; } = [];
    /// <summary>Diameter of a rotating part in millimetres; null when it does not turn or is not known.</summary>
    public Quantity? Diameter { get; init; }
    /// <summary>Marked as a safety position. See <see cref="Library.IsSafety(Position)"/> for the whole rule.</summary>
    public bool Safety { get; init; }
    /// <summary>Pictures.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}
