namespace Crossref.Browser.Tests.Tabs;

/// <summary>A running browser.</summary>
public interface IBrowser
{
    /// <summary>A tab that sees nothing that was stored by another.</summary>
    Task<ITab> NewTabAsync();
}
