using Crossref.Core.Records;
using Crossref.Site.Pages.Templating;
using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Crossref.Site.Pages;

/// <summary>Notes as HTML: no raw HTML, links to records as relative links, other addresses as text, pictures from the content folder only.</summary>
internal sealed class NoteHtml(Desk desk, PageLinks links)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().Build();

    internal Markup Of(Note note)
    {
        var document = Markdown.Parse(note.Markdown, Pipeline);
        // The page has the first heading already.
        foreach (var heading in document.Descendants<HeadingBlock>()) heading.Level = Math.Min(heading.Level + 1, 6);
        foreach (var link in document.Descendants<LinkInline>().ToList()) Rewrite(link);
        foreach (var link in document.Descendants<AutolinkInline>().ToList()) link.ReplaceBy(new LiteralInline(link.Url));
        using var html = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(html);
        Pipeline.Setup(renderer);
        renderer.Render(document);
        return new Markup(html.ToString());
    }

    private void Rewrite(LinkInline link)
    {
        var target = link.Url ?? "";
        var href = link.IsImage ? PictureHref(target) : RecordHref(target);
        if (href is not null)
        {
            link.Url = href;
            return;
        }
        // Nothing that leads out of the folder becomes a link; its text and its address stay readable.
        var text = new ContainerInline();
        link.TransferChildrenTo(text);
        if (target.Length > 0) text.AppendChild(new LiteralInline($" ({target})"));
        link.ReplaceBy(text);
    }

    private string? RecordHref(string target)
    {
        var colon = target.IndexOf(':', StringComparison.Ordinal);
        return colon <= 0 ? null : links.Record(target[(colon + 1)..]).Href;
    }

    private string? PictureHref(string file) =>
        PageMap.Picture(file) is { } path && desk.Options.ReadPicture(file) is not null ? links.Href(path) : null;
}
