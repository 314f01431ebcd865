namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>Smallest and largest sizes of a bearing of class Normal, in millimetres; null where they are not known.</summary>
public sealed record BearingLimits(Interval? Bore, Interval? Outside, Interval? Width)
{
    /// <summary>The limits for nominal sizes in millimetres; a width that is not known has none.</summary>
    public static BearingLimits Of(double bore, double outside, double? width) => new(
        Limits(bore, BearingTolerance.Bore(bore)), Limits(outside, BearingTolerance.Outside(outside)), Limits(width, BearingTolerance.Width(bore)));

    private static Interval? Limits(double? nominal, Interval? deviation) => nominal is { } size && deviation is { } off ? size + off : null;
}
