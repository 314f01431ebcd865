namespace Crossref.Core.Arithmetic.Lamps;

/// <summary>What a tungsten heater lamp's rating says about it. The lamp is taken as a plain resistance: no standard, just P = V²/R and I = P/V.</summary>
/// <param name="Volts">Rated volts, above zero.</param>
/// <param name="Watts">Rated watts, above zero.</param>
public sealed record Lamp(Interval Volts, Interval Watts)
{
    /// <summary>
    /// How many times the resistance rises from cold to hot. From memory: the resistivity of tungsten is about 5.6e-8 ohm m at
    /// 300 K and about 7e-7 ohm m at 2400 K; figures for lamps lie between 10 and 16.
    /// </summary>
    public static Interval ColdToHot { get; } = new(10, 16);

    /// <summary>Ohms that a meter's leads may add when nobody measured them. Common practice, no source.</summary>
    public static Interval UnmeasuredLeads { get; } = new(0, 2);

    /// <summary>Resistance in ohms at rated volts, the filament hot.</summary>
    public Interval HotOhms => Volts * Volts / Watts;

    /// <summary>Current in amperes at rated volts.</summary>
    public Interval Amps => Watts / Volts;

    /// <summary>The ohms that a meter may show with the filament cold: a tenth to a sixteenth of <see cref="HotOhms"/>.</summary>
    public Interval ColdOhms => HotOhms / ColdToHot;

    /// <summary>What a cold reading without the leads says.</summary>
    /// <param name="reading">Ohms, the leads taken off.</param>
    public FilamentState Filament(Interval reading)
    {
        // What is left of decimal figures after binary arithmetic must not decide.
        var cold = new Interval(ColdOhms.Low - 1e-9, ColdOhms.High + 1e-9);
        return reading.Low > HotOhms.High + 1e-9 ? FilamentState.Open
            : !reading.Meets(cold) ? FilamentState.Implausible
            : cold.Holds(reading) ? FilamentState.Plausible
            : FilamentState.CannotTell;
    }

    /// <summary>
    /// Whether the lamp is rated for a supply: true only for one and the same nominal voltage, false when it is rated for another
    /// one, null when the figures leave both open. That it is true makes no fit.
    /// </summary>
    /// <param name="supply">The nominal voltage, or what was measured at the supply, in volts.</param>
    public bool? IsRatedFor(Interval supply)
    {
        IReadOnlyList<Interval> meant = [.. SupplyVoltage.Meant(supply).Select(s => Interval.Exactly(s.Volts))];
        if (meant.Count == 0) meant = [supply];
        if (!meant.Any(m => m.Meets(Volts))) return false;
        return meant is [var only] && only == Volts && Volts.HalfWidth == 0 ? true : null;
    }
}
