namespace Crossref.Site.Reading.Shapes;

/// <summary>How many of a few keys must be there.</summary>
internal enum DemandKind
{
    /// <summary>One and no more.</summary>
    ExactlyOne,
    /// <summary>One or none.</summary>
    AtMostOne,
    /// <summary>One or more.</summary>
    AnyOf,
}
