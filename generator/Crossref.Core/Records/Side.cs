namespace Crossref.Core.Records;

/// <summary>Where on the paper's way a symptom arises; the half-stop test tells.</summary>
public enum Side
{
    /// <summary>Not known, or anywhere.</summary>
    Any,
    /// <summary>On the imaging side, before the fixing unit.</summary>
    BeforeFixing,
    /// <summary>In the fixing unit.</summary>
    Fixing,
    /// <summary>After the fixing unit.</summary>
    AfterFixing,
    /// <summary>In the drive or the transport.</summary>
    Mechanical,
}
