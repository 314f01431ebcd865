namespace Crossref.Core.Lookup;

/// <summary>One thing that can be looked up: a part, a position, a symptom, a machine and so on.</summary>
public sealed record LookupEntry
{
    /// <summary>What it is, in one lower-case word such as <c>part</c>. With <see cref="Id"/> unique in an index.</summary>
    public required string Type { get; init; }

    /// <summary>Its identifier; typed whole it is an exact hit, and its pieces count as text.</summary>
    public required string Id { get; init; }

    /// <summary>Its name: the words that weigh most. Texts over 300 characters are shortened for display.</summary>
    public required string Title { get; init; }

    /// <summary>Its page, relative to the root of the site.</summary>
    public required string Page { get; init; }

    /// <summary>One short line shown under the title; its words count as text.</summary>
    public string Detail { get; init; } = "";

    /// <summary>The kind of part, for the filter; its words count as text.</summary>
    public string? Kind { get; init; }

    /// <summary>Ids of the families it belongs to, for the filter; their words count as text.</summary>
    public IReadOnlyList<string> Families { get; init; } = [];

    /// <summary>Its standing as a word, for the filter.</summary>
    public string? Standing { get; init; }

    /// <summary>The numbers it is found by. The <see cref="Id"/> need not be among them.</summary>
    public IReadOnlyList<LookupNumber> Numbers { get; init; } = [];

    /// <summary>Other names; they weigh less than the title and more than the text.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Any further text it should be found by; never shown.</summary>
    public string Text { get; init; } = "";
}
