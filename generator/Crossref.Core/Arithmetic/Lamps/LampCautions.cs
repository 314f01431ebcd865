namespace Crossref.Core.Arithmetic.Lamps;

/// <summary>What can hurt somebody who has a heater lamp in hand.</summary>
public static class LampCautions
{
    /// <summary>In the order in which they matter.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A lamp is a safety part. Figures and dimensions never decide whether another one fits; continuity proves neither volts nor watts.",
        "Mains: a lamp's ends can be live with the lamp off, and no interlock is proof. Unplug, or isolate, lock off, relieve what is stored and prove dead (29 CFR 1910.147; EN 50110-1). Local codes come first, and the electrical work is for licensed people where the law asks for them.",
        "Heat: lamp and rollers stay hot after power-off. Wait, then measure.",
        "Quartz: never touch the tube with bare hands; wipe it with alcohol and a clean cloth before power. Wear eye protection, it may shatter. Do not bend it, and leave it room to expand.",
        "Cut-outs, thermal fuses, thermostats, thermistors and interlocks are never bypassed, not even for a test.",
    ];
}
