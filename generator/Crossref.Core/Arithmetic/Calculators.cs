using Crossref.Core.Arithmetic.Workings;

namespace Crossref.Core.Arithmetic;

/// <summary>Every calculator there is.</summary>
public static class Calculators
{
    /// <summary>In the order in which a reader meets them.</summary>
    public static IReadOnlyList<Calculator> All { get; } =
    [
        RepeatCalculator.Create(),
        BearingCalculator.Create(),
        FitCalculator.Create(),
        GearCalculator.Create(),
        LampCalculator.Create(),
        ThermistorCalculator.Create(),
        SpringCalculator.Create(),
        SparesCalculator.Create(),
    ];
}
