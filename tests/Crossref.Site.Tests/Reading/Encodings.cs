namespace Crossref.Site.Tests.Reading;

/// <summary>Ways in which editors of different systems save the same text.</summary>
public enum Encodings
{
    /// <summary>As it stands.</summary>
    Plain,
    /// <summary>With carriage returns.</summary>
    CarriageReturns,
    /// <summary>With a byte order mark.</summary>
    ByteOrderMark,
}
