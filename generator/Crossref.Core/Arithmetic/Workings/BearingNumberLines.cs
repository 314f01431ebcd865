using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>What a bearing's number says, line by line.</summary>
internal static class BearingNumberLines
{
    /// <summary>Adds the lines; gives the answer's sentence.</summary>
    internal static string Add(BearingDesignation bearing, List<WorkingLine> lines)
    {
        var (bore, outside, width) = ((double)bearing.Bore, (double)bearing.Outside, (double?)bearing.Width);
        var row = bearing.Row;
        var limits = BearingLimits.Of(bore, outside, width);
        lines.Add(new("number", bearing.Canonical, bearing.AlsoNamed.Length > 0 ? $"also named {bearing.AlsoNamed}" : "one way of writing it"));
        if (bearing.Prefix.Length > 0) lines.Add(new("letter in front", bearing.Prefix, "stainless steel with most makers; not standardised"));
        lines.Add(new("bore", Figure.Of(bore, 3, "mm"), BoreCode.Says(bearing.Number)));
        lines.Add(new("outside", Figure.Of(outside, 3, "mm"), Source(row)));
        lines.Add(width is { } wide
            ? new("width", Figure.Of(wide, 3, "mm"), Source(row))
            : new("width", "unknown", $"the table has {BearingWidth.Listed(bearing.Number)}; this closure may be wider: measure"));
        Limits("bore", limits.Bore, BearingTolerance.BoreBand(bore), "mean bore", bearing, lines);
        Limits("outside", limits.Outside, BearingTolerance.OutsideBand(outside), "mean outside diameter", bearing, lines);
        Limits("width", limits.Width, BearingTolerance.WidthBand(bore), "ring width by bore", bearing, lines);
        lines.Add(Flange(bearing));
        lines.Add(Shields(bearing));
        lines.Add(bearing.Clearance is not { } clearance ? new("clearance", "unknown", "what could not be read may be the clearance")
            : new("clearance", clearance, bearing.ClearanceWritten ? Meaning(bearing, "clearance") : "nothing is marked, so normal"));
        lines.Add(Play(bearing, bore));
        foreach (var mark in bearing.Marks.Where(m => m.Says == "other")) lines.Add(new("mark " + mark.Text, mark.Meaning, "the maker's own letters"));
        if (bearing.Unread.Length > 0) lines.Add(new("not read", bearing.Unread, "the maker's own letters, such as grease or cage"));
        return Sentence(bearing, bore, outside, width);
    }

    private static string Source(BearingRow row) =>
        $"{(row.Series.StartsWith("maker", StringComparison.Ordinal) ? "makers' own metric size" : "ISO 15, series " + row.Series)}; {(row.Makers == 1 ? "one maker's handbook" : $"{row.Makers} makers' handbooks agree")}";

    private static void Limits(string what, Interval? limits, ToleranceBand? band, string symbol, BearingDesignation bearing, List<WorkingLine> lines)
    {
        if (limits is not { } sizes || band is null) return;
        var narrower = bearing.Class == "Normal" ? "" : $"; {bearing.Class} is narrower and not in the table";
        lines.Add(new(what + " limits", Figure.Of(sizes, 3, "mm"), $"ISO 492 class Normal, {symbol} {band.Range}: {Figure.Of(band.Micrometres, 0, "µm")}{narrower}"));
    }

    private static WorkingLine Flange(BearingDesignation bearing) =>
        !bearing.Flanged ? new("flange", "none", "no F in front")
        : bearing.FlangeOutside is { } outside && bearing.FlangeWidth is { } width
            ? new("flange", $"{Figure.Of((double)outside, 3, "mm")} across, {Figure.Of((double)width, 3, "mm")} wide", "F in front; one maker's handbook")
            : new("flange", "unknown", "F in front; the table has no flange for this number and closure: measure");

    private static WorkingLine Shields(BearingDesignation bearing) => bearing.Shields is not { } shields
        ? new("shields", "unknown", "what could not be read may be the closure")
        : new("shields", shields, bearing.Marks.Any(m => m.Says == "closure") ? Meaning(bearing, "closure") : "nothing is marked");

    private static string Meaning(BearingDesignation bearing, string what)
    {
        var mark = bearing.Marks.First(m => m.Says.Contains(what, StringComparison.Ordinal));
        return $"{mark.Text}: {mark.Meaning}";
    }

    private static WorkingLine Play(BearingDesignation bearing, double bore)
    {
        if (bearing.Clearance is not { } group) return new("radial clearance", "unknown", "the group is unknown");
        return RadialClearance.Of(bore, group) is { } band
            ? new("radial clearance", Figure.Of(band.Micrometres, 0, "µm"), $"ISO 5753-1, group {group}, bore {band.Range}, before fitting")
            : new("radial clearance", "unknown", $"the table has no group {group} for this bore");
    }

    private static string Sentence(BearingDesignation bearing, double bore, double outside, double? width)
    {
        var sizes = $"{Figure.Number(bore, 3)} × {Figure.Number(outside, 3)}" + (width is { } wide ? $" × {Figure.Of(wide, 3, "mm")}" : " mm, width unknown");
        var flange = !bearing.Flanged ? "" : bearing.FlangeOutside is { } across ? $", flange {Figure.Of((double)across, 3, "mm")}" : ", flange unknown";
        return $"{bearing.Canonical} is {sizes}{flange}, shields {bearing.Shields ?? "unknown"}, clearance {bearing.Clearance ?? "unknown"}.";
    }
}
