namespace Crossref.Core.Sizes;

/// <summary>How two sizes stand to each other.</summary>
public enum Agreement
{
    /// <summary>Both are known and no further apart than measuring and making allow.</summary>
    Agrees,
    /// <summary>Both are known and further apart than that.</summary>
    Differs,
    /// <summary>One of them is not on record: nobody can say.</summary>
    Unknown,
}
