using Crossref.Core.Arithmetic.Bearings;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

public class BearingDesignationTests
{
    private static readonly string[] Closures = ["", "-Z", "-2Z", "-RS", "-2RS", "-RZ", "-2RZ", "-2TS"];
    private static readonly string[] Clearances = ["", "/C1", "/C2", "/C3", "/C4", "/C5", "/CM"];
    private static readonly string[] Classes = ["", "/P6", "/P5", "/P4", "/ABEC9"];
    private static readonly string[] Ends = ["", " N", " NR", " TN9", " M", " LHT", " AV2S", " T9H"];

    private static readonly Gen<string> Numbers =
        from row in Gen.OneOf(BearingTable.Rows.ToArray())
        from name in Gen.OneOf(row.AlsoNamed.Prepend(row.Designation).Select(BearingTable.WithoutClosure).ToArray())
        from prefix in Gen.OneOf("", "", "S", "SS", "W")
        from flanged in Gen.Bool
        from closure in Gen.OneOf(Closures)
        from clearance in Gen.OneOf(Clearances)
        from tolerance in Gen.OneOf(Classes)
        from end in Gen.OneOf(Ends)
        select prefix + (flanged ? BearingTable.FlangedName(name) : name) + closure + clearance + tolerance + end;

    private static readonly Gen<BearingDesignation> Bearings = Numbers.Select(BearingDesignation.Read).Where(b => b is not null).Select(b => b!);

    [Fact]
    public void What_is_written_back_reads_as_the_same_bearing() => Bearings.Sample(bearing =>
    {
        var again = BearingDesignation.Read(bearing.Canonical);
        return again is not null && again.Canonical == bearing.Canonical && Facts(again) == Facts(bearing);
    });

    [Fact]
    public void Only_numbers_that_stand_for_shields_alone_are_refused() => Numbers.Sample(text =>
        BearingDesignation.Read(text) is not null || text.Contains("628/", StringComparison.Ordinal));

    [Fact]
    public void Sizes_lead_back_to_the_number_wherever_the_width_is_known() => Bearings.Where(b => b.Width is not null).Sample(bearing =>
        BearingMatch.All((double)bearing.Bore, (double)bearing.Outside, (double)bearing.Width!).Any(m => m.Possible && m.Row.Basic == bearing.Basic));

    [Fact]
    public void Ways_of_writing_read_alike() => Gen.Select(Bearings, Gen.Int[0, 5]).Sample((bearing, way) =>
    {
        var text = bearing.Canonical;
        var other = way switch
        {
            0 => "  " + text.ToLowerInvariant(),
            1 => text.Replace("-2Z", "ZZ", StringComparison.Ordinal).Replace("-2RS", "-2RS1", StringComparison.Ordinal),
            2 => text.Replace("-", " - ", StringComparison.Ordinal),
            3 => text.Replace("-", "\u2013", StringComparison.Ordinal),
            4 => text.Replace("/C", " C", StringComparison.Ordinal).Replace("/P", "-P", StringComparison.Ordinal),
            _ => text.Replace("-2Z", " 2z", StringComparison.Ordinal).Replace("-2RS", " 2-rsh", StringComparison.Ordinal).Replace("MR", "mr ", StringComparison.Ordinal),
        };
        return BearingDesignation.Read(other) is { } again && Facts(again) == Facts(bearing);
    });

    [Fact]
    public void What_could_not_be_read_leaves_closure_and_clearance_open() => Bearings.Where(b => b.Unread.Length > 0).Sample(bearing =>
        (bearing.Shields is null) == !bearing.Marks.Any(m => m.Says == "closure") && bearing.ClearanceWritten == bearing.Clearance is not null);

    [Theory]
    [InlineData("61901", "6901", "12x24x6", "open", "CN")]
    [InlineData("6001-2Z/C3", "6001", "12x28x8", "2Z", "C3")]
    [InlineData("6001 2RS C3", "6001", "12x28x8", "2RS", "C3")]
    [InlineData("60012RS", "6001", "12x28x8", "2RS", "CN")]
    [InlineData("6201ZZCMAV2S", "6201", "12x32x10", "2Z", "CM")]
    [InlineData("6001DDUC3", "6001", "12x28x8", "2RS", "C3")]
    [InlineData("6001-2RS1/P63", "6001", "12x28x8", "2RS", "C3")]
    [InlineData("6001 P52", "6001", "12x28x8", "open", "C2")]
    [InlineData("W 61901-2RS1", "6901", "12x24x6", "2RS", "CN")]
    [InlineData("SMF105ZZ", "MR105", "5x10x4", "2Z", "CN")]
    [InlineData("F688ZZ", "688", "8x16x5", "2Z", "CN")]
    [InlineData("673", "MR63", "3x6x2", "open", "CN")]
    [InlineData("628/8-2Z", "688", "8x16x5", "2Z", "CN")]
    [InlineData("MR115ZZ", "MR115", "5x11x4", "2Z", "CN")]
    [InlineData("16100", "16100", "10x28x8", "open", "CN")]
    [InlineData("638", "638", "8x28x9", "open", "CN")]
    // The table has no such width; another figure would be false.
    [InlineData("688-2RS", "688", "8x16x?", "2RS", "CN")]
    [InlineData("618/8-2Z", "688", "8x16x?", "2Z", "CN")]
    [InlineData("6700ZZ", "6700", "10x15x?", "2Z", "CN")]
    [InlineData("MR115", "MR115", "5x11x?", "open", "CN")]
    // MC3 of Japanese miniature lists is not C3; T9H may be anything.
    [InlineData("608ZZ MC3", "608", "8x22x7", "2Z", "?")]
    [InlineData("6806 T9H", "6806", "30x42x7", "?", "?")]
    public void Numbers_are_read_as_the_trade_means_them(string text, string basic, string sizes, string shields, string clearance)
    {
        var bearing = BearingDesignation.Read(text)!;
        Assert.Equal(
            (basic, sizes, shields, clearance),
            (bearing.Basic, $"{bearing.Bore:0.#}x{bearing.Outside:0.#}x{(bearing.Width is { } w ? w.ToString("0.#", null) : "?")}", bearing.Shields ?? "?", bearing.Clearance ?? "?"));
    }

    [Theory]
    [InlineData("6202-10", "bore of its own")]
    [InlineData("6202/16", "bore of its own")]
    [InlineData("6202-2RS-10", "bore of its own")]
    [InlineData("6202-17MM", "bore of its own")]
    [InlineData("6203-5/8", "bore of its own")]
    [InlineData("638/8", "638/8 is not in the table")]
    [InlineData("628/8", "628/8-2Z")]
    [InlineData("628/8-2RS1", "628/8-2Z")]
    [InlineData("6082RS", "608-2RS")]
    [InlineData("63012RS", "6301-2RS")]
    [InlineData("7204", "not in the table")]
    [InlineData("6312-2Z", "not in the table")]
    [InlineData("R8", "inch")]
    [InlineData("FR4ZZ", "inch")]
    [InlineData("12 x 28 x 8", "sizes")]
    [InlineData("6205K", "tapered")]
    [InlineData("6001 C3 C4", "two clearances")]
    [InlineData("6001 Z 2RS", "two closures")]
    [InlineData("6001 <b>", "no part|not part")]
    [InlineData("bearing", "no bearing number")]
    [InlineData("", "no bearing number")]
    public void What_cannot_be_read_is_refused_in_words(string text, string says)
    {
        Assert.False(BearingDesignation.TryRead(text, out var bearing, out var problem));
        Assert.Null(bearing);
        Assert.Contains(says.Split('|'), s => problem.Contains(s, StringComparison.Ordinal));
    }

    [Fact]
    public void Whatever_is_written_is_read_or_refused_in_words() => Gen.String[Gen.Char["0123456789 -/.,ZRSMFCWP26uzx×–é\u00a0\n\t"], 0, 80].Sample(text =>
        BearingDesignation.TryRead(text, out var bearing, out var problem) == (problem.Length == 0) && (bearing is null) == (problem.Length > 0));

    private static (string, string, decimal, decimal, decimal?, bool, decimal?, decimal?, string?, string?, string, string) Facts(BearingDesignation b) =>
        (b.Prefix, b.Basic, b.Bore, b.Outside, b.Width, b.Flanged, b.FlangeOutside, b.FlangeWidth, b.Shields, b.Clearance, b.Class, b.Unread);
}
