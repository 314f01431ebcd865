namespace Crossref.Core.Storing;

/// <summary>A content folder cannot be changed now; nothing in it was.</summary>
public sealed class StoreException(string message, string hint, Exception? cause = null) : IOException(message, cause)
{
    /// <summary>What to do.</summary>
    public string Hint { get; } = hint;
}
