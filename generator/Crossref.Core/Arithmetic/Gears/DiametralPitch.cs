namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Inch gears: teeth per inch of reference diameter (ANSI/AGMA). m = 25.4 / DP exactly, an inch being 25.4 mm.</summary>
public static class DiametralPitch
{
    /// <summary>The module in millimetres of a diametral pitch.</summary>
    public static Interval ToModule(Interval pitch) => 25.4 / pitch;

    /// <summary>The diametral pitch of a module in millimetres.</summary>
    public static Interval FromModule(Interval module) => 25.4 / module;
}
