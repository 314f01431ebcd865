namespace Crossref.Site.Pages.Templating;

/// <summary>Text that is HTML already. Only code makes it, never a template; everything else that a template writes is escaped.</summary>
public sealed class Markup
{
    internal Markup(string html) => Html = html;

    internal string Html { get; }

    /// <summary>Whether there is anything to show.</summary>
    public bool IsEmpty => Html.Length == 0;

    /// <inheritdoc/>
    public override string ToString() => Html;
}
