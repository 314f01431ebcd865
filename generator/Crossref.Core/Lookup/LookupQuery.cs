namespace Crossref.Core.Lookup;

/// <summary>
/// What is looked for. An empty text with a filter lists what the filter leaves; without one it finds nothing.
/// </summary>
/// <param name="Text">Numbers, words or both, as typed; read up to 200 characters and 12 terms.</param>
public sealed record LookupQuery(string Text)
{
    /// <summary>The most hits to return; at least 1.</summary>
    public int Limit { get; init; } = 50;

    /// <summary>Only entries of this type, when given.</summary>
    public string? Type { get; init; }

    /// <summary>Only entries of this kind, when given.</summary>
    public string? Kind { get; init; }

    /// <summary>Only entries of this family, when given.</summary>
    public string? Family { get; init; }

    /// <summary>Only entries of this standing, when given.</summary>
    public string? Standing { get; init; }
}
