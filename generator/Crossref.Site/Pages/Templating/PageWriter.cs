using Crossref.Site.Pages.Views;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Crossref.Site.Pages.Templating;

/// <summary>Writes pages with the templates of a folder. Parses each template once; not for several threads.</summary>
internal sealed class PageWriter : ITemplateLoader
{
    private const string Layout = "layout.html";

    // What every page must say before it loads anything: nothing runs or loads but the site's own files.
    private const string Policy =
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:\">";

    private readonly TemplateFolder _folder;
    private readonly EscapingContext _context;
    private readonly Template _layout;

    internal PageWriter(TemplateFolder folder)
    {
        _folder = folder;
        _context = new EscapingContext(this);
        _layout = Parse(Layout);
    }

    /// <summary>A page as HTML. Templates see <c>frame</c> (what every page has) and <c>page</c> (what this kind of page shows).</summary>
    /// <exception cref="TemplateProblemException">A template is wrong.</exception>
    internal string Write(Frame frame, object page)
    {
        var globals = new ScriptObject { ["frame"] = frame, ["page"] = page };
        _context.PushGlobal(globals);
        try
        {
            return WithPolicy(_layout.Render(_context));
        }
        catch (ScriptRuntimeException problem)
        {
            throw Innermost(problem);
        }
        finally
        {
            _context.PopGlobal();
        }
    }

    string ITemplateLoader.GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) =>
        TemplateFolder.Has(templateName)
            ? templateName
            : throw new ScriptRuntimeException(callerSpan, $"there is no template '{templateName}'");

    string ITemplateLoader.Load(TemplateContext context, SourceSpan callerSpan, string templatePath)
    {
        // Parsed here only to report a broken one by its own name and line.
        Parse(templatePath);
        return _folder.ReadText(templatePath);
    }

    ValueTask<string?> ITemplateLoader.LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
        new(((ITemplateLoader)this).Load(context, callerSpan, templatePath));

    // A shop's own layout may have lost it.
    private string WithPolicy(string page)
    {
        var at = page.IndexOf(Policy, StringComparison.Ordinal);
        if (at >= 0 && page.AsSpan(0, at).IndexOf("<script", StringComparison.OrdinalIgnoreCase) < 0 && page.AsSpan(0, at).IndexOf("<link", StringComparison.OrdinalIgnoreCase) < 0) return page;
        throw new TemplateProblemException(_folder.NameOf(Layout), 1, 1, $"every page must begin its head, before it loads anything, with {Policy}");
    }

    private Template Parse(string name)
    {
        var template = Template.Parse(_folder.ReadText(name), name);
        if (template.Messages.FirstOrDefault(m => m.Type == ParserMessageType.Error) is { } error) throw Problem(error.Span, error.Message, null);
        return template;
    }

    // The innermost cause names the template where it went wrong, not the one that included it.
    private TemplateProblemException Innermost(ScriptRuntimeException problem)
    {
        var at = problem;
        for (Exception? cause = problem; cause is not null; cause = cause.InnerException)
        {
            if (cause is TemplateProblemException told) return told;
            if (cause is ScriptRuntimeException inner) at = inner;
        }
        return Problem(at.Span, at.OriginalMessage, problem);
    }

    private TemplateProblemException Problem(SourceSpan span, string message, Exception? cause) =>
        new(_folder.NameOf(span.FileName ?? Layout), span.Start.Line + 1, span.Start.Column + 1, message.TrimEnd('.'), cause);
}
