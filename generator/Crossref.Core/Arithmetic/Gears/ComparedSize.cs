using Crossref.Core.Sizes;

namespace Crossref.Core.Arithmetic.Gears;

/// <summary>One size of two gears, held against each other.</summary>
/// <param name="Name">The size: "module".</param>
/// <param name="Agreement">What came out; unknown also when it was measured too loosely to tell.</param>
/// <param name="Rule">How far apart they may be, and why.</param>
public sealed record ComparedSize(string Name, Agreement Agreement, string Rule);
