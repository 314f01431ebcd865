namespace Crossref.Core.Arithmetic.Springs;

/// <summary>How a compression spring ends, which decides how many of its coils work. Shigley, Mechanical Engineering Design, table 10-1 (from memory; its worked answers agree for open-ground).</summary>
/// <param name="Name">The word to choose it by.</param>
/// <param name="Idle">Coils that do not work.</param>
/// <param name="Extra">Wire thicknesses that the touching length has beyond the number of coils.</param>
public sealed record SpringEnds(string Name, int Idle, int Extra)
{
    /// <summary>Every form of end.</summary>
    public static IReadOnlyList<SpringEnds> All { get; } =
        [new("closed", 2, 1), new("closed-ground", 2, 0), new("open", 0, 1), new("open-ground", 1, 0)];

    /// <summary>The form of that name; null when there is none.</summary>
    public static SpringEnds? Find(string name) => All.FirstOrDefault(e => e.Name == name);
}
