namespace Crossref.Browser.Tests.Tabs;

/// <summary>A browser's tab, as far as a reader needs one; the scenarios are written once and run in every browser.</summary>
public interface ITab
{
    /// <summary>What the tab asked for and complained of since it was made.</summary>
    PageWatch Watch { get; }

    /// <summary>Opens an address and waits until it is loaded.</summary>
    Task OpenAsync(string address);

    /// <summary>Types a text, key by key.</summary>
    Task TypeAsync(string text);

    /// <summary>Presses one key, by its name in the DOM.</summary>
    Task PressAsync(string key);

    /// <summary>Clicks the first element that the CSS selector finds.</summary>
    Task ClickAsync(string selector);

    /// <summary>Makes the page that wide and 800 high.</summary>
    Task ResizeAsync(int width);

    /// <summary>Runs a function of one text that answers a text.</summary>
    Task<string> RunAsync(string script, string argument);
}
