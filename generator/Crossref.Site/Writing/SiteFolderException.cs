namespace Crossref.Site.Writing;

/// <summary>The folder for the site cannot be used.</summary>
public sealed class SiteFolderException : IOException
{
    /// <summary>Says what is wrong and what to do.</summary>
    public SiteFolderException(string message, string hint, Exception? cause = null) : base(message, cause) => Hint = hint;

    /// <summary>What to do.</summary>
    public string Hint { get; }
}
