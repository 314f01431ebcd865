using System.Globalization;

namespace Crossref.Core.Arithmetic.Gears;

/// <summary>The tooth sizes in use: modules of ISO 54, the known ones below 1 mm, whole diametral pitches.</summary>
public static class ToothSizes
{
    /// <summary>
    /// Two modules are one when they differ by no more than this share. It is less than half of what lies between module 0.8
    /// and 32 DP (0.78 %), the nearest twins of the trade; common practice, no source.
    /// </summary>
    public const double Margin = 0.003;

    /// <summary>How far a size may be from what a tip diameter points to and still be named; common practice, no source.</summary>
    public const double Near = 0.01;

    /// <summary>Sizes so near to each other are twins: easily taken for one another.</summary>
    public const double Twin = 0.02;

    /// <summary>Every size, modules first, smallest module first among them.</summary>
    public static IReadOnlyList<ToothSize> All { get; } = [.. EmbeddedTable.Rows("tooth-sizes.csv").Select(Read)];

    /// <summary>Every size that what was measured holds or that is near to its middle, the nearest first.</summary>
    public static IReadOnlyList<ToothMatch> Matching(Interval module) =>
        [.. All.Select(s => Match(s, module)).Where(m => m.Holds || Math.Abs(m.Off) <= Near + 1e-9).OrderBy(m => Math.Abs(m.Off))];

    /// <summary>The size nearest to the middle of what was measured, however far.</summary>
    public static ToothMatch Nearest(Interval module) => All.Select(s => Match(s, module)).MinBy(m => Math.Abs(m.Off))!;

    /// <summary>The sizes that are easily taken for this one.</summary>
    public static IReadOnlyList<ToothSize> TwinsOf(ToothSize size) =>
        [.. All.Where(s => s != size && Math.Abs(s.Module / size.Module - 1) <= Twin + 1e-9)];

    private static ToothMatch Match(ToothSize size, Interval module)
    {
        var off = module.Middle / size.Module - 1;
        var held = size.Module >= module.Low - 1e-9 && size.Module <= module.High + 1e-9;
        return new ToothMatch(size, off, held || Math.Abs(off) <= Margin + 1e-9);
    }

    private static ToothSize Read(IReadOnlyList<string> row)
    {
        var value = double.Parse(row[1], CultureInfo.InvariantCulture);
        return row[0] == "dp" ? new ToothSize(row[1] + " DP", 25.4 / value, row[2]) : new ToothSize("module " + row[1], value, row[2]);
    }
}
