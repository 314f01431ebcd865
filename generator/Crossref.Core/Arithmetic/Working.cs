namespace Crossref.Core.Arithmetic;

/// <summary>A calculation laid open: every step, what it comes to, and what to mind.</summary>
public sealed record Working
{
    /// <summary>The steps, in the order in which one would write them down.</summary>
    public required IReadOnlyList<WorkingLine> Lines { get; init; }
    /// <summary>What it comes to, in one or two plain sentences.</summary>
    public required string Answer { get; init; }
    /// <summary>What can hurt somebody or mislead, in plain sentences.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
    /// <summary>Sizes to look for among the parts on record; null when there is nothing to look for.</summary>
    public Sought? Sought { get; init; }
}
