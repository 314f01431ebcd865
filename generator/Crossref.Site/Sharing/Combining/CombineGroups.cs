namespace Crossref.Site.Sharing.Combining;

/// <summary>What combining did, in words, in the order in which a reader wants to know it. What needed nothing is left out.</summary>
public static class CombineGroups
{
    /// <summary>Each outcome and its heading.</summary>
    public static IReadOnlyList<(CombineOutcome Outcome, string Heading)> All { get; } =
    [
        (CombineOutcome.ToChoose, "Copies differ here, and somebody has to choose. Until then the first text that crossref choose shows is in force"),
        (CombineOutcome.KeptAside, "Kept aside, because it cannot be taken as it is"),
        (CombineOutcome.New, "New here"),
        (CombineOutcome.Restored, "Was lost here, and is back"),
        (CombineOutcome.TheirsNewer, "Theirs is newer, and was taken"),
        (CombineOutcome.Merged, "Changed in both copies; both changes are in it now"),
        (CombineOutcome.Picture, "Pictures"),
    ];

    /// <summary>The keys that a decision names, behind a colon; empty for none.</summary>
    public static string Of(IReadOnlyList<string> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        return keys.Count == 0 ? "" : ": " + string.Join("; ", keys.Select(Name));
    }

    /// <summary>A key as a reader knows it.</summary>
    public static string Name(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Length == 0 ? "the whole record" : key;
    }
}
