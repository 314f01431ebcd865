namespace Crossref.Core.Arithmetic.Limits;

/// <summary>A hole and a shaft together. Sizes in millimetres; a gap below zero is interference.</summary>
public static class Fit
{
    /// <summary>The smallest gap (smallest hole, largest shaft) to the largest.</summary>
    public static Interval Gap(Interval hole, Interval shaft) => hole - shaft;

    /// <summary>The kind of fit by the words of ISO 286-1: clearance when it is never tight, interference when never loose, else transition.</summary>
    public static string Kind(Interval gap) => gap.Low >= -1e-9 ? "clearance fit" : gap.High <= 1e-9 ? "interference fit" : "transition fit";

    /// <summary>"loose by 0.007 to 0.041 mm", with at most so many decimals.</summary>
    public static string Words(Interval gap, int decimals) =>
        gap.Low >= -1e-9 ? "loose by " + Figure.Of(gap, decimals, "mm")
        : gap.High <= 1e-9 ? "tight by " + Figure.Of(new Interval(-gap.High, -gap.Low), decimals, "mm")
        : $"between tight by {Figure.Number(-gap.Low, decimals)} and loose by {Figure.Of(gap.High, decimals, "mm")}";
}
