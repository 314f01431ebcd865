namespace Crossref.Core.Records;

/// <summary>What was found at a position.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Condition">In the finder's words.</param>
/// <param name="Note">A remark.</param>
public sealed record Finding(Ref Position, string Condition, string? Note)
{
    // Words that say the part had not failed; every other word counts as worn or broken.
    private static readonly HashSet<string> Sound =
        new(["good", "ok", "sound", "undamaged", "clean", "dirty"], StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a condition in words means that the part was worn or broken.</summary>
    public static bool MeansFailed(string? condition) => condition is not null && !Sound.Contains(condition.Trim());

    /// <summary>Whether what was found was worn or broken.</summary>
    public bool Failed => MeansFailed(Condition);
}
