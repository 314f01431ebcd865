using System.Globalization;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic;

/// <summary>What a calculation says about a part that somebody holds, so that parts like it can be looked for.</summary>
/// <param name="Kind">The kind of part; the calculator bears its name.</param>
/// <param name="Sizes">The sizes that are known of it, by the attribute's name under <c>size</c>.</param>
public sealed record Sought(PartKind Kind, IReadOnlyDictionary<string, Size> Sizes)
{
    /// <summary>The size that is one of several, written as the span of them: it rules out what lies outside and proves nothing of what lies inside. Null for none.</summary>
    public string? Doubtful { get; init; }

    /// <summary>A size as it was written.</summary>
    internal static Size Written(Quantity quantity) => new(quantity.ToString(), quantity);

    /// <summary>A size that was worked out, to nine decimals.</summary>
    internal static Size WorkedOut(Interval size, Dimension dimension) => Written(new Quantity(Rounded(size.Middle), Rounded(size.HalfWidth), dimension));

    private static decimal Rounded(double value) => decimal.Parse(Figure.Number(value, 9), CultureInfo.InvariantCulture);
}
