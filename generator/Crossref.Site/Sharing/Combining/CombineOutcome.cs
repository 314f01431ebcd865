namespace Crossref.Site.Sharing.Combining;

/// <summary>What combining did with a record.</summary>
public enum CombineOutcome
{
    /// <summary>Both copies say the same.</summary>
    Alike,
    /// <summary>Only this copy has it.</summary>
    OnlyHere,
    /// <summary>Ours is newer than theirs, and stays.</summary>
    OursNewer,
    /// <summary>Theirs is newer than ours, and was taken.</summary>
    TheirsNewer,
    /// <summary>Both were changed, and both changes are in it now.</summary>
    Merged,
    /// <summary>It is new here.</summary>
    New,
    /// <summary>It was lost here, and is back.</summary>
    Restored,
    /// <summary>Copies differ where only somebody can say what is right.</summary>
    ToChoose,
    /// <summary>It was kept aside, because its id means something else here, or because it says it is ours and we do not know it.</summary>
    KeptAside,
    /// <summary>A picture.</summary>
    Picture,
}
