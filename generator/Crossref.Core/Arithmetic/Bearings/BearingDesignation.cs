namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// A bearing's number, read: what it fixes and what it leaves open. The basic number follows DIN 623-1; the letters after
/// it are the makers' own. Grease and cage temperature are not in it.
/// </summary>
public sealed record BearingDesignation
{
    /// <summary>As written.</summary>
    public required string Text { get; init; }
    /// <summary>The letters S, SS or W in front, which most makers use for stainless steel; empty for none.</summary>
    public string Prefix { get; init; } = "";
    /// <summary>The number as written, in its own style and without its letters: <c>61901</c>.</summary>
    public required string Number { get; init; }
    /// <summary>The number under which the table has it: <c>6901</c>.</summary>
    public required string Basic { get; init; }
    /// <summary>Bore in millimetres.</summary>
    public required decimal Bore { get; init; }
    /// <summary>Outside diameter in millimetres, without a flange.</summary>
    public required decimal Outside { get; init; }
    /// <summary>
    /// Width in millimetres. Null where the table has no width for this closure: several small bearings are wider with
    /// shields or seals than open, and the width of the other form would be a false figure.
    /// </summary>
    public decimal? Width { get; init; }
    /// <summary>Whether the outer ring has a flange.</summary>
    public bool Flanged { get; init; }
    /// <summary>Flange outside diameter in millimetres; null without a flange and where the table has none.</summary>
    public decimal? FlangeOutside { get; init; }
    /// <summary>Flange width in millimetres; null without a flange and where the table has none.</summary>
    public decimal? FlangeWidth { get; init; }
    /// <summary>open, Z, 2Z, RS, 2RS, RZ, 2RZ or 2TS; null where something unread may be the closure.</summary>
    public string? Shields { get; init; }
    /// <summary>C1 to C5, CN or CM; CN when nothing is marked; null where something unread may be the clearance.</summary>
    public string? Clearance { get; init; }
    /// <summary>Whether the clearance is written, not just CN because nothing is.</summary>
    public bool ClearanceWritten { get; init; }
    /// <summary>Tolerance class of ISO 492: Normal, P6, P5, P4 or P2. Normal when nothing is marked.</summary>
    public required string Class { get; init; }
    /// <summary>Every letter group after the number, in the order of writing.</summary>
    public required IReadOnlyList<BearingMark> Marks { get; init; }

    /// <summary>Letter groups whose meaning is not known, with spaces between; empty when all were read.</summary>
    public string Unread => string.Join(' ', Marks.Where(m => m.Says.Length == 0).Select(m => m.Text));

    /// <summary>The table's row for this closure; for a closure that is not listed the open bearing's, or the only one there is.</summary>
    public BearingRow Row => (Shields == "2Z" ? BearingTable.WithShields(Number) : null) ?? BearingTable.Open(Number) ?? BearingTable.WithShields(Number)!;

    /// <summary>Its names in other styles than <see cref="Canonical"/>: "61901", "628/8-2Z"; empty when there are none or they are not sure.</summary>
    public string AlsoNamed
    {
        get
        {
            var (row, closure) = (Row, Row.Shielded || Shields is null or "open" ? "" : "-" + Shields);
            var sure = !Flanged && (row.AnyClosure || (row.Shielded ? Shields == "2Z" : Shields == "open"));
            var names = row.AlsoNamed.Prepend(row.Designation).Where(n => BearingTable.WithoutClosure(n) != Basic);
            return sure ? string.Join(", ", names.Select(n => n + closure)) : "";
        }
    }

    /// <summary>
    /// One way of writing it, with everything that was read: <c>F688-2Z</c>, <c>6901-2RS/C3</c>. Reads back as the same bearing.
    /// The table's style, unless the other style's closed width is another.
    /// </summary>
    public string Canonical
    {
        get
        {
            var number = BearingWidth.Of(Basic, Shields) == Width ? Basic : Number;
            if (Flanged) number = BearingTable.FlangedName(number);
            var closure = Shields is null or "open" ? "" : "-" + Shields;
            var clearance = Clearance is null or "CN" ? "" : "/" + Clearance;
            var tolerance = Class == "Normal" ? "" : Class == "P2" ? "/ABEC9" : "/" + Class;
            return Prefix + number + closure + clearance + tolerance + string.Concat(Marks.Where(m => m.Says is "" or "other").Select(m => " " + m.Text));
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Canonical;

    /// <summary>Reads a designation as the trade writes it; null when it cannot be read.</summary>
    public static BearingDesignation? Read(string text) => TryRead(text, out var designation, out _) ? designation : null;

    /// <summary>Reads a designation; on failure <paramref name="problem"/> says in words why not and what to write instead.</summary>
    public static bool TryRead(string text, out BearingDesignation? designation, out string problem) => BearingReader.TryRead(text, out designation, out problem);
}
