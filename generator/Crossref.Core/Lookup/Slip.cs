namespace Crossref.Core.Lookup;

/// <summary>The one slip of the keys between what was typed and a number.</summary>
internal enum Slip
{
    /// <summary>They are the same, or more than one slip apart.</summary>
    None,

    /// <summary>One character is another.</summary>
    Other,

    /// <summary>One character too few was typed.</summary>
    Missing,

    /// <summary>One character too many was typed.</summary>
    Extra,

    /// <summary>Two neighbours changed places.</summary>
    Swapped,
}
