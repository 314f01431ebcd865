using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>A size of a part, and where it comes from.</summary>
public readonly record struct KnownSize(Size Size, SizeOrigin Origin);
