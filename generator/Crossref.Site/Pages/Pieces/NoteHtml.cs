using Crossref.Core.Records;
using Crossref.Site.Pages.Templating;
using Crossref.Site.Reading.Notes;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Crossref.Site.Pages.Pieces;

/// <summary>
/// Notes as HTML. The checks refuse raw HTML and addresses that lead out of the folder; should one come this far all the
/// same, it is shown as text.
/// </summary>
internal sealed class NoteHtml(Desk desk, PageLinks links)
{
    internal Markup Of(Note note)
    {
        var document = Markdown.Parse(note.Markdown, NotePipeline.Instance);
        // The page has the first heading already.
        foreach (var heading in document.Descendants<HeadingBlock>()) heading.Level = Math.Min(heading.Level + 1, 6);
        foreach (var link in document.Descendants<LinkInline>().ToList()) Rewrite(link, note);
        foreach (var link in document.Descendants<AutolinkInline>().ToList()) link.ReplaceBy(new LiteralInline(link.Url));
        foreach (var table in document.Descendants<Table>()) AlignByClass(table);
        using var html = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(html);
        NotePipeline.Instance.Setup(renderer);
        renderer.ObjectRenderers.Replace<HtmlBlockRenderer>(new BlockAsText());
        renderer.ObjectRenderers.Replace<HtmlInlineRenderer>(new InlineAsText());
        renderer.Render(document);
        return new Markup(html.ToString());
    }

    private void Rewrite(LinkInline link, Note note)
    {
        var target = link.Url ?? "";
        var href = link.IsImage ? desk.PictureHref(links, Owner.FileNamedIn(note.Place.File, Uri.UnescapeDataString(target))) : RecordHref(target, note);
        if (href is not null)
        {
            link.Url = href;
            return;
        }
        var text = new ContainerInline();
        link.TransferChildrenTo(text);
        if (!link.IsImage && target.Length > 0) text.AppendChild(new LiteralInline($" ({target})"));
        link.ReplaceBy(text);
    }

    // The pages' policy refuses the inline styles that Markdown would write for a column.
    private static void AlignByClass(Table table)
    {
        foreach (var row in table.OfType<TableRow>())
        {
            foreach (var (cell, column) in row.OfType<TableCell>().Zip(table.ColumnDefinitions))
                if (column.Alignment == TableColumnAlign.Right) cell.GetAttributes().AddClass("num");
        }
        foreach (var column in table.ColumnDefinitions) column.Alignment = null;
    }

    // Another library's note speaks of its own records where it has them.
    private string? RecordHref(string target, Note note)
    {
        var colon = target.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0) return null;
        var id = target[(colon + 1)..];
        var theirs = Owner.OfFile(note.Place.File) is { } library ? Owner.Address(library, id) : id;
        return links.Record(desk.Library.Records.ContainsKey(theirs) ? theirs : id).Href;
    }

    private sealed class BlockAsText : HtmlObjectRenderer<HtmlBlock>
    {
        protected override void Write(HtmlRenderer renderer, HtmlBlock obj) => renderer.Write("<p>").WriteEscape(obj.Lines.ToString()).Write("</p>\n");
    }

    private sealed class InlineAsText : HtmlObjectRenderer<HtmlInline>
    {
        protected override void Write(HtmlRenderer renderer, HtmlInline obj) => renderer.WriteEscape(obj.Tag);
    }
}
