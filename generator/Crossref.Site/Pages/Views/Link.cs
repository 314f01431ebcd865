using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Views;

/// <summary>Text that leads somewhere. Written by a template it becomes an anchor, or plain text where it leads nowhere.</summary>
/// <param name="Href">A relative address made by <see cref="PageLinks"/>; null when there is no such page.</param>
/// <param name="Text">What is shown.</param>
/// <param name="Style">A class for the look, such as <c>no</c> for a part number; null for none.</param>
public sealed record Link(string? Href, string Text, string? Style = null)
{
    internal string ToHtml()
    {
        var text = Escape.Html(Text);
        var look = Style is null ? "" : $" class=\"{Style}\"";
        if (Href is not null) return $"<a{look} href=\"{Escape.Html(Href)}\">{text}</a>";
        return Style is null ? text : $"<span{look}>{text}</span>";
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
