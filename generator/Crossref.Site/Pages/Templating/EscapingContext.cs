using Crossref.Site.Pages.Views;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Crossref.Site.Pages.Templating;

/// <summary>
/// The one place where page text is escaped: whatever a template writes is shown as text, unless code has wrapped it as
/// <see cref="Markup"/>. A <see cref="Link"/> and a <see cref="Phrase"/> write themselves as anchors around escaped text.
/// </summary>
internal sealed class EscapingContext : TemplateContext
{
    internal EscapingContext(ITemplateLoader loader) : base(Builtins())
    {
        TemplateLoader = loader;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        AutoIndent = false;
        LoopLimit = 0;
        LimitToString = 0;
        NewLine = "\n";
    }

    /// <inheritdoc/>
    public override TemplateContext Write(SourceSpan span, object? textAsObject) => textAsObject switch
    {
        null => this,
        Markup markup => Write(markup.Html),
        Link link => Write(link.ToHtml()),
        Phrase phrase => Write(phrase.ToHtml()),
        _ => Write(Escape.Html(ObjectToString(textAsObject) ?? "")),
    };

    private static BuiltinFunctions Builtins()
    {
        var builtins = new BuiltinFunctions();
        builtins.SetValue("include", new IncludeAsMarkup(), true);
        // With these a template could run text of a record as a template.
        foreach (var name in (string[])["eval", "eval_template"]) ((ScriptObject)builtins["object"]!).Remove(name);
        return builtins;
    }
}
