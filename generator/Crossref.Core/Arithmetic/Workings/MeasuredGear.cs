namespace Crossref.Core.Arithmetic.Workings;

/// <summary>What was measured on a gear apart from its own sizes; whatever is null was not.</summary>
internal sealed record MeasuredGear
{
    internal Interval? Tip { get; init; }
    internal Interval? Root { get; init; }
    internal Interval? Span { get; init; }
    internal int? SpanTeeth { get; init; }
    internal Interval? NextSpan { get; init; }
    internal Interval? Distance { get; init; }
    /// <summary>Teeth of the second gear.</summary>
    internal int? MateTeeth { get; init; }

    /// <summary>What one tooth more adds to the span.</summary>
    internal Interval? Pitch => NextSpan is { } next && Span is { } span ? next - span : null;
}
