using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>
/// How far apart two sizes of one attribute may be and still be one and the same to a repairer. Where a standard says how
/// exactly parts are made, it decides; elsewhere the figure is common practice, no source.
/// </summary>
/// <param name="Width">In the attribute's unit; 0 where only equal will do.</param>
/// <param name="Reason">Why that much.</param>
public readonly record struct WorkingTolerance(double Width, string Reason)
{
    /// <summary>The share of the value that the width is; null where the width does not grow with the value but by steps, if at all.</summary>
    public double? Share { get; private init; }

    // Any bore over 2.5 and up to 50 mm.
    private const double OrdinaryBore = 10;

    // A plain hole or journal of ordinary make is held within grade IT9.
    private const int PlainGrade = 9;

    /// <summary>The tolerance of an attribute at a value.</summary>
    public static WorkingTolerance Of(PartKind kind, string attribute, double value) => (kind.Name, attribute) switch
    {
        ("bearing", "bore" or "outside" or "width") => Bearing(attribute, value),
        (_, "bore" or "journal") or ("sleeve", "outside") => Fitted(value),
        (_, "outside" or "width" or "length" or "face" or "lit-length" or "overall-length" or "circumference" or "free-length" or "depth") =>
            new(GeneralTolerance.Medium(value), "ISO 2768-1, class m"),
        // 32 DP is 0.8 % off module 0.8, the nearest of the near twins.
        (_, "module") => OfShare(0.003, value, "closer than 32 DP is to module 0.8"),
        (_, "pitch") => OfShare(0.005, value, "closer than 1/5 inch is to 5 mm"),
        (_, "wire") => OfShare(0.02, value, "the rate goes with its fourth power"),
        (_, "rate" or "torque" or "watts") => OfShare(0.05, value, "makers' spread"),
        (_, "r25" or "beta") => OfShare(0.01, value, "the usual grade of thermistors"),
        (_, "helix" or "pressure-angle") => new(0.1, "a tenth of a degree"),
        (_, "temp" or "grease-temp") => new(5, "ratings go in steps of ten"),
        _ => new(0, "must be equal"),
    };

    private static WorkingTolerance Bearing(string attribute, double value)
    {
        // The width is held by the bore, not by the width; every bore in the table of ISO 15 has this one.
        var limits = attribute switch
        {
            "bore" => BearingTolerance.Bore(value),
            "outside" => BearingTolerance.Outside(value),
            _ => BearingTolerance.Width(OrdinaryBore),
        };
        return limits is { } found ? new(found.High - found.Low, "ISO 492, class Normal") : new(0, "outside the table of ISO 492");
    }

    private static WorkingTolerance Fitted(double value) => StandardTolerance.Width(PlainGrade, value) is { } width
        ? new(width, "ISO 286-1, grade IT9")
        : new(GeneralTolerance.Medium(value), "ISO 2768-1, class m");

    private static WorkingTolerance OfShare(double share, double value, string reason) =>
        new(share * Math.Abs(value), $"{Figure.Number(share * 100, 1)} %: {reason}") { Share = share };
}
