namespace Crossref.Core.Lookup;

/// <summary>
/// What a number is to the entry that carries it. The values are written into the index and are ordered
/// as exact hits rank: the first names the entry most surely.
/// </summary>
public enum NumberRole
{
    /// <summary>A current number, as moulded or printed.</summary>
    Number = 0,

    /// <summary>The same thing under another maker's number.</summary>
    Also = 1,

    /// <summary>The same thing under an older number.</summary>
    Earlier = 2,

    /// <summary>A generic designation, which many entries may share.</summary>
    Generic = 3,

    /// <summary>An identifier of the library. Answers when typed whole; its pieces are found as words.</summary>
    Id = 4,
}
