namespace Crossref.Core.Checking;

/// <summary>How much a diagnostic matters.</summary>
public enum Severity
{
    /// <summary>Nothing is built until this is mended.</summary>
    Error,
    /// <summary>Worth a look; the site is built.</summary>
    Warning,
}
