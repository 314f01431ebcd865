namespace Crossref.Core.Arithmetic.Thermistors;

/// <summary>What can hurt somebody or mislead about a thermistor.</summary>
public static class ThermistorCautions
{
    /// <summary>In the order in which they matter.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A thermistor is a safety part: one that reads cold lets the roller overheat. Figures only tell whether it is plausible; only the maker's document for that machine makes another one a fit.",
        "Measure with the machine unplugged or isolated and proved dead, the unit cool, the thermistor unplugged. Local codes come first.",
        "B holds near the two temperatures that its maker took it from; far from them the law is off by degrees.",
    ];
}
