using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Crossref.Site.Reading.Notes;

/// <summary>
/// Looks through a note's Markdown for what it links to and shows, and refuses what must not reach a page. Only what
/// is known to be harmless passes: record schemes for links, files of the content folder for pictures.
/// </summary>
internal sealed class NoteBody
{
    // Reading rows of open brackets takes the square of their length; a paragraph of this many characters is still quick.
    private const int LongestBlock = 40_000;

    private readonly string _path;
    private readonly int _linesBefore;
    private readonly DiagnosticLog _log;
    private readonly List<Ref> _links = [];
    private readonly List<Picture> _pictures = [];
    private int _htmlLine = -1;

    internal NoteBody(string path, string markdown, int linesBefore, DiagnosticLog log)
    {
        (_path, _linesBefore, _log) = (path, linesBefore, log);
        if (LongBlock(markdown) is { } line)
        {
            Refuse(line, $"more than {LongestBlock} characters without a blank line", "break it into paragraphs");
            return;
        }
        try
        {
            foreach (var item in Markdown.Parse(markdown, NotePipeline.Instance).Descendants()) Look(item);
        }
        catch (ArgumentException)
        {
            // The parser's only way to say that brackets or quotes are nested beyond its limit.
            Refuse(0, "this note is nested too deep to be read", "take out the rows of brackets or quote marks");
        }
    }

    /// <summary>Whether the Markdown can be followed at all.</summary>
    internal bool IsReadable { get; private set; } = true;

    internal IReadOnlyList<Ref> Links => _links;

    internal IReadOnlyList<Picture> Pictures => _pictures;

    private void Refuse(int line, string message, string hint)
    {
        _log.Add(NoteCodes.NoteTooDense, new Place(_path, line + 1 + _linesBefore, 1), message, hint);
        IsReadable = false;
    }

    // The line, from 0, at which a run of lines with something in them begins that is too long; null when there is none.
    private static int? LongBlock(string markdown)
    {
        var (line, start, length) = (0, 0, 0);
        foreach (var text in markdown.AsSpan().EnumerateLines())
        {
            if (text.IsWhiteSpace()) (start, length) = (line + 1, 0);
            else if ((length += text.Length) > LongestBlock) return start;
            line++;
        }
        return null;
    }

    private void Look(MarkdownObject item)
    {
        if (item is HtmlEntityInline or LinkInline or FencedCodeBlock && Hides(item)) return;
        switch (item)
        {
            // An opening and a closing mark in one line are one mistake.
            case HtmlBlock or HtmlInline when item.Line == _htmlLine:
                break;
            case HtmlBlock or HtmlInline:
                _htmlLine = item.Line;
                _log.Add(NoteCodes.RawHtml, PlaceOf(item), "a note cannot hold HTML", "write it in Markdown; a < that is meant as itself is written \\<");
                break;
            case AutolinkInline link:
                RefuseLink(link.Url, PlaceOf(item));
                break;
            case LinkInline { IsImage: true } picture:
                Picture(picture);
                break;
            case LinkInline link:
                Link(link.Url ?? "", PlaceOf(item));
                break;
        }
    }

    // The file itself holds no hidden character, but an entity such as &#8238; may write one.
    private bool Hides(MarkdownObject item)
    {
        var written = item switch
        {
            HtmlEntityInline entity => entity.Transcoded.ToString(),
            LinkInline link => link.Url + link.Title,
            FencedCodeBlock code => code.Info + code.Arguments,
            _ => "",
        };
        return _log.AddHidden(written, PlaceOf(item), "remove it; a code between & and ; writes it");
    }

    private void Link(string url, Place place)
    {
        var colon = url.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && colon < url.Length - 1 && Targets.ByWord.ContainsKey(url[..colon])) _links.Add(new Ref(url, place));
        else RefuseLink(url, place);
    }

    private void RefuseLink(string url, Place place)
    {
        var scheme = url.Split(':')[0];
        var isAddress = url.StartsWith("http", StringComparison.OrdinalIgnoreCase) || url.StartsWith("//", StringComparison.Ordinal) || url.Contains('@', StringComparison.Ordinal);
        var otherwise = isAddress
            ? "write the address as plain text; nothing on the site leads out of it"
            : $"link to a record with {string.Join(", ", Targets.ByWord.Keys.Select(s => s + ":"))}";
        _log.Add(NoteCodes.LinkAway, place, $"'{ScalarChecker.Shown(url)}' is not a link to a record",
            Targets.ByWord.ContainsKey(scheme) ? $"write what it leads to behind {scheme}:"
                : url.Contains(':', StringComparison.Ordinal) && !isAddress ? Suggest.Hint(scheme, Targets.ByWord.Keys, otherwise) : otherwise);
    }

    private void Picture(LinkInline picture)
    {
        var words = string.Concat(picture.Descendants().OfType<LiteralInline>().Select(l => l.Content.ToString()));
        _pictures.Add(new Picture(Owner.FileNamedIn(_path, Uri.UnescapeDataString(picture.Url ?? "")), words, PlaceOf(picture)));
    }

    // Markdig counts lines and columns from 0.
    private Place PlaceOf(MarkdownObject item) => new(_path, item.Line + 1 + _linesBefore, item.Column + 1);
}
