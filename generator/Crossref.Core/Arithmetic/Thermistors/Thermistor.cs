namespace Crossref.Core.Arithmetic.Thermistors;

/// <summary>
/// A thermistor whose resistance falls with temperature: R = R25 · exp(B · (1/T - 1/298.15 K)). Makers state R25 and B so; the
/// standard is IEC 60539-1 (from memory). B is not quite constant: it holds near the two temperatures it was taken from.
/// </summary>
/// <param name="R25">Ohms at 25 °C, above zero.</param>
/// <param name="B">B value in kelvin, above zero.</param>
public sealed record Thermistor(Interval R25, Interval B)
{
    /// <summary>25 °C in kelvin.</summary>
    public const double Kelvin25 = 298.15;

    /// <summary>0 °C in kelvin.</summary>
    public const double KelvinZero = 273.15;

    /// <summary>Where the law is used, in degrees Celsius; wide enough for any thermistor of a fixing unit. Common practice, no source.</summary>
    public static Interval Range { get; } = new(-60, 400);

    /// <summary>B values that are worth working with, in kelvin. Makers' own lie between about 2000 and 6000 K; beyond these somebody mistyped or misread.</summary>
    public static Interval CredibleB { get; } = new(1000, 10_000);

    /// <summary>Ohms at a temperature in degrees Celsius, which lies inside <see cref="Range"/>.</summary>
    public Interval OhmsAt(Interval celsius) => R25 * (B * (Inverse(celsius) - 1 / Kelvin25)).Rising(Math.Exp);

    /// <summary>The temperature in degrees Celsius at which it has so many ohms, above zero; null when part of it lies outside <see cref="Range"/>.</summary>
    public Interval? CelsiusAt(Interval ohms)
    {
        var inverse = (ohms / R25).Rising(Math.Log) / B + 1 / Kelvin25;
        return Inverse(Range).Holds(inverse) ? inverse.Falling(i => 1 / i) - KelvinZero : null;
    }

    /// <summary>
    /// The B value in kelvin from two readings, in ohms and degrees Celsius inside <see cref="Range"/>; null when the two
    /// temperatures may be the same. Zero or less when the resistance does not fall with temperature.
    /// </summary>
    public static Interval? BFrom(Interval ohms, Interval celsius, Interval otherOhms, Interval otherCelsius) =>
        celsius.Meets(otherCelsius) ? null : (ohms / otherOhms).Rising(Math.Log) / (Inverse(celsius) - Inverse(otherCelsius));

    private static Interval Inverse(Interval celsius) => (celsius + KelvinZero).Falling(k => 1 / k);
}
