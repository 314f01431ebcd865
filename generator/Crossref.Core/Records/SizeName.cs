using Crossref.Core.Quantities;

namespace Crossref.Core.Records;

/// <summary>An attribute that may be written under <c>size</c>.</summary>
/// <param name="Name">As written.</param>
/// <param name="Measures">What it measures; null when it is a word.</param>
public sealed record SizeName(string Name, Dimension? Measures)
{
    /// <summary>The words that it may be; none where any word will do.</summary>
    public IReadOnlyList<string> Words { get; private init; } = [];

    // Names that are short to write and unclear to read.
    private static readonly Dictionary<string, string> Long = new(StringComparer.Ordinal)
    {
        ["outside"] = "outside diameter", ["face"] = "face width", ["grease-temp"] = "grease temperature", ["temp"] = "temperature rating",
        ["helix"] = "helix angle", ["lit-length"] = "lit length", ["overall-length"] = "overall length", ["journal"] = "journal diameter",
        ["r25"] = "resistance at 25 °C", ["beta"] = "B value", ["trip"] = "trips at", ["amps"] = "current", ["volts"] = "voltage", ["watts"] = "power",
        ["free-length"] = "free length", ["wire"] = "wire diameter", ["pressure-angle"] = "pressure angle", ["rate"] = "spring rate",
    };

    // A hand must match: in two spellings it would rule a good part out.
    private static string[] Hands => ["left", "right", "none", "clockwise", "anticlockwise"];

    /// <summary>Every attribute.</summary>
    public static IReadOnlyList<SizeName> All { get; } =
    [
        .. Measured(Dimension.Length, "bore outside width length face module lit-length overall-length journal circumference pitch free-length wire depth"),
        .. Measured(Dimension.Temperature, "grease-temp temp trip"),
        .. Measured(Dimension.Number, "teeth"),
        .. Measured(Dimension.Angle, "helix pressure-angle"),
        .. Measured(Dimension.Voltage, "volts"),
        .. Measured(Dimension.Power, "watts"),
        .. Measured(Dimension.Current, "amps"),
        .. Measured(Dimension.Resistance, "r25"),
        .. Measured(Dimension.Kelvin, "beta"),
        .. Measured(Dimension.SpringRate, "rate"),
        .. Measured(Dimension.Torque, "torque"),
        .. Names("flange shields clearance hand ends profile contact reset frame grade").Select(n => new SizeName(n, null) { Words = n == "hand" ? Hands : [] }),
    ];

    /// <summary>The attribute's name as a reader understands it.</summary>
    public static string InWords(string name) => Long.GetValueOrDefault(name) ?? name.Replace('-', ' ');

    /// <summary>The attribute of that name; null when there is none.</summary>
    public static SizeName? Find(string name) => All.FirstOrDefault(a => a.Name == name);

    private static IEnumerable<SizeName> Measured(Dimension dimension, string names) =>
        Names(names).Select(n => new SizeName(n, dimension));

    private static string[] Names(string names) => names.Split(' ');
}
