namespace Crossref.Core.Arithmetic.Gears;

/// <summary>One size of two gears, held against each other.</summary>
/// <param name="Name">The size: "module".</param>
/// <param name="Agreement">What came out.</param>
/// <param name="Rule">When they agree: "within 0.3%".</param>
public sealed record SizeComparison(string Name, Agreement Agreement, string Rule);
