namespace Crossref.Core.Arithmetic.Rolling;

/// <summary>What can hurt somebody or mislead who looks for the cause of repeating marks.</summary>
public static class RepeatCautions
{
    /// <summary>In the order in which they matter.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Two marks on opposite sides of one roller give half its distance. A mark on every second turn only is unusual.",
        "The half-stop test parts what lies before the fixing unit from what lies in it. Toner that is not fixed smears: carry that sheet flat.",
        "Unplug or isolate before any cover comes off, and let a fixing unit cool; then measure, do not trust the clock. Local codes come first.",
    ];
}
