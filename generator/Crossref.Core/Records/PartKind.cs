namespace Crossref.Core.Records;

/// <summary>
/// A kind of part: which attributes decide whether another one interchanges, which of them must match, and whether
/// every part of the kind is a safety part. The table is common practice in the trade, no source.
/// </summary>
public sealed class PartKind
{
    private PartKind(string name, string plural, string deciding, string mustMatch, bool safety)
    {
        Name = name;
        Plural = plural;
        Deciding = Split(deciding);
        MustMatch = Split(mustMatch);
        Safety = safety;
    }

    /// <summary>The word written under <c>kind</c>.</summary>
    public string Name { get; }

    /// <summary>The word for several of them.</summary>
    public string Plural { get; }

    /// <summary>Attributes that decide an interchange, the most telling first; empty when no size decides.</summary>
    public IReadOnlyList<string> Deciding { get; }

    /// <summary>Those of <see cref="Deciding"/> whose known difference rules a part out, whatever anyone claims.</summary>
    public IReadOnlyList<string> MustMatch { get; }

    /// <summary>Whether every part of this kind is a safety part.</summary>
    public bool Safety { get; }

    /// <summary>Every kind, in the order of the table.</summary>
    public static IReadOnlyList<PartKind> All { get; } =
    [
        new("bearing", "bearings", "bore outside width flange shields clearance grease-temp", "bore", false),
        new("sleeve", "sleeves", "bore outside length temp", "", false),
        new("gear", "gears", "module teeth face helix hand pressure-angle bore", "module helix hand", false),
        new("lamp", "lamps", "volts watts lit-length overall-length ends", "volts ends", true),
        new("roller", "rollers", "outside length journal", "", false),
        new("belt", "belts", "circumference width pitch profile", "pitch profile", false),
        new("thermistor", "thermistors", "r25 beta contact", "r25 beta", true),
        new("cutout", "cut-outs", "trip amps reset", "trip amps reset", true),
        new("spring", "springs", "free-length rate wire", "", false),
        new("filter", "filters", "frame depth grade", "", false),
        new("clutch", "clutches", "bore volts torque hand", "volts hand", false),
        new("blade", "blades", "", "", false),
        new("claw", "claws", "", "", false),
        new("switch", "switches", "", "", true),
        new("board", "boards", "", "", true),
        new("other", "other parts", "", "", false),
    ];

    /// <summary>The kind of that name; null when there is none.</summary>
    public static PartKind? Find(string name) => All.FirstOrDefault(k => k.Name == name);

    /// <summary>The kind for parts that are nothing else.</summary>
    public static PartKind Other => All[^1];

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static string[] Split(string words) => words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
