namespace Crossref.Core.Sizes;

/// <summary>Where a size on record comes from.</summary>
public enum SizeOrigin
{
    /// <summary>Somebody wrote it under <c>size</c>.</summary>
    Written,
    /// <summary>It follows from the designation under <c>standard</c>.</summary>
    Designation,
}
