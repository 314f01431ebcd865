namespace Crossref.Core.Arithmetic;

/// <summary>One line of a working.</summary>
/// <param name="What">What the figure is: "tip diameter".</param>
/// <param name="Figure">The figure with its unit, or a word: "42 mm", "unknown".</param>
/// <param name="How">How it comes about: the formula, the table, the standard.</param>
public sealed record WorkingLine(string What, string Figure, string How);
