namespace Crossref.Core.Evidence;

/// <summary>Whether a condition holds for a machine.</summary>
public enum Truth
{
    /// <summary>It does not hold.</summary>
    False,
    /// <summary>Too little is known about the machine, or no machine was named.</summary>
    Unknown,
    /// <summary>It holds.</summary>
    True,
}
