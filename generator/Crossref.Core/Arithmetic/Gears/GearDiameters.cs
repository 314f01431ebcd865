namespace Crossref.Core.Arithmetic.Gears;

/// <summary>
/// Diameters of external gears in millimetres (ISO 21771), teeth as the basic rack of ISO 53, profile A: addendum 1 module,
/// dedendum 1.25 modules. Modules and pressure angles are those of the normal section; a helix angle of 0° is a spur gear.
/// </summary>
public static class GearDiameters
{
    /// <summary>Addendum in modules (ISO 53, profile A).</summary>
    public const double Addendum = 1;

    /// <summary>Dedendum in modules (ISO 53, profile A).</summary>
    public const double Dedendum = 1.25;

    /// <summary>d = z · m / cos β.</summary>
    public static Interval Reference(int teeth, Interval module, Interval helix) => GearAngles.TransverseModule(module, helix) * teeth;

    /// <summary>d_b = d · cos α_t.</summary>
    public static Interval Base(int teeth, Interval module, Interval pressureAngle, Interval helix) =>
        Reference(teeth, module, helix) * Degrees.Cos(GearAngles.TransversePressureAngle(pressureAngle, helix));

    /// <summary>d_a = d + 2 m (1 + x + k).</summary>
    /// <param name="teeth">How many teeth.</param>
    /// <param name="module">Normal module.</param>
    /// <param name="helix">Helix angle.</param>
    /// <param name="shift">Profile shift x, in modules.</param>
    /// <param name="alteration">Tip alteration k, in modules; below 0 when the tips are shortened.</param>
    public static Interval Tip(int teeth, Interval module, Interval helix, double shift = 0, double alteration = 0) =>
        module * (teeth / Degrees.Cos(helix) + 2 * (Addendum + shift + alteration));

    /// <summary>d_f = d − 2 m (1.25 − x).</summary>
    public static Interval Root(int teeth, Interval module, Interval helix, double shift = 0, double dedendum = Dedendum) =>
        module * (teeth / Degrees.Cos(helix) - 2 * (dedendum - shift));

    /// <summary>The module that a tip diameter points to if there is no profile shift: m = d_a / (z / cos β + 2).</summary>
    public static Interval ModuleByTip(int teeth, Interval tip, Interval helix) => tip / (teeth / Degrees.Cos(helix) + 2 * Addendum);

    /// <summary>The module that the whole depth points to, whatever the profile shift: m = (d_a − d_f) / 4.5.</summary>
    public static Interval ModuleByDepth(Interval tip, Interval root) => (tip - root) / (2 * (Addendum + Dedendum));
}
