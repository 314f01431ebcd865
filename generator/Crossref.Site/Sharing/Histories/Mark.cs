namespace Crossref.Site.Sharing.Histories;

/// <summary>What one state of a record said at one key.</summary>
/// <param name="State">The state that said it first.</param>
/// <param name="Text">The key's own lines; where it was taken out, those that it had.</param>
/// <param name="Library">The library in which that was written.</param>
/// <param name="Date">When that was noted.</param>
internal sealed record Mark(string State, string Text, string Library, string Date)
{
    /// <summary>Whether the key was taken out.</summary>
    internal bool IsOut { get; init; }

    /// <summary>
    /// Whether it is another library's word on what documents: it is in force only when somebody here writes it.
    /// </summary>
    internal bool IsOffered { get; init; }

    /// <summary>For something taken out with all that is below it: the states of what was below when that was done.</summary>
    internal IReadOnlyList<string> Below { get; init; } = [];

    /// <summary>What it says; null for nothing.</summary>
    internal string? Says => IsOut ? null : Text;
}
