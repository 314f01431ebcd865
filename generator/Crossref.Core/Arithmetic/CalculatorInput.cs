using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic;

/// <summary>Something a calculator asks for. The command's option and the page's field follow from it.</summary>
/// <param name="Name">The option's name without its dashes, and the field's: <c>tip</c>.</param>
/// <param name="Label">What the field asks for: "Tip diameter".</param>
/// <param name="Measures">What it measures; null for a word.</param>
public sealed record CalculatorInput(string Name, string Label, Dimension? Measures)
{
    /// <summary>What may be written here, such as <c>34.02 +/- 0.02</c>.</summary>
    public string Example { get; init; } = "";
    /// <summary>One sentence that helps whoever fills it in; empty when the label says it all.</summary>
    public string Help { get; init; } = "";
    /// <summary>The heading under which the page folds it away until it is wanted; empty for what most people begin with.</summary>
    public string Group { get; init; } = "";
    /// <summary>The words to choose from; empty when anything may be written.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];
    /// <summary>The value that is meant when nothing is written; empty for none.</summary>
    public string Default { get; init; } = "";
    /// <summary>Whether nothing can be worked out without it.</summary>
    public bool Required { get; init; }
    /// <summary>Whether the command takes it as its argument, without an option's name.</summary>
    public bool Argument { get; init; }
    /// <summary>Whether only a whole number will do, above zero unless zero may be written.</summary>
    public bool Whole { get; init; }
    /// <summary>Whether zero and less may be written; sizes, powers and ratios are above zero.</summary>
    public bool MayBeZeroOrLess { get; init; }
}
