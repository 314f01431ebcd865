namespace Crossref.Core.Lookup;

/// <summary>The index is damaged or written in a format this reader does not know; the message says which.</summary>
public sealed class LookupFormatException : Exception
{
    /// <summary>Creates the exception.</summary>
    public LookupFormatException()
    {
    }

    /// <summary>Creates the exception with what to tell the user.</summary>
    public LookupFormatException(string message)
        : base(message)
    {
    }

    /// <summary>Creates the exception with what to tell the user and the cause.</summary>
    public LookupFormatException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
