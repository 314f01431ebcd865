namespace Crossref.Core.Arithmetic;

/// <summary>What a calculator makes of its inputs: a working, or everything that is wrong with them.</summary>
/// <param name="Working">Null when the inputs will not do.</param>
/// <param name="Problems">What is wrong with them; empty when there is a working.</param>
public sealed record CalculatorResult(Working? Working, IReadOnlyList<InputProblem> Problems);
