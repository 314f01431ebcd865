using AngleSharp.Dom;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Pages;
using Crossref.Site.Reading;

namespace Crossref.Site.Tests.Hostile;

/// <summary>Hostile Markdown in every place of a note.</summary>
public sealed class HostileNoteTests
{
    private const string Anything = "<script>globalThis.canary=1</script><img src=x onerror=globalThis.canary=1>\"' onload='x' {{ 7 * 6 }} {% x %} <% y %>";

    private static readonly string[] Attributes = ["href", "title", "src", "alt", "class"];

    private static readonly SiteOptions Options = new(new DateOnly(2026, 6, 1));

    /// <summary>Taken, and shown with no more than these elements.</summary>
    public static TheoryData<string, string> Taken => new()
    {
        { "`" + Anything + "`", "p code" },
        { "``` html \" onclick=\"x\n" + Anything + "\n```", "pre code" },
        { "    " + Anything, "pre code" },
        { "{{ 7 * 6 }} {%- x -%} \\<% y %>", "p" },
        { "\\<script>globalThis.canary=1\\</script>", "p" },
        { "&lt;script&gt;globalThis.canary=1&lt;/script&gt; &#60;img src=x onerror=x&#62; &quot; &#39;", "p" },
        { "[\\<b> onclick=x](part:gear-left \"&lt;b&gt; ' onclick='x' &quot; onclick=x\")", "p a" },
        { "[x][y]\n\n[y]: part:gear-left '\" onclick=\"x'", "p a" },
        { "![&lt;img src=x onerror=x&gt; \" onerror=\"x](pictures/flange.jpg '\" onerror=\"x')", "p img" },
        { "|`<b>`|\\<i>|\n|:-:|-:|\n|&lt;s&gt;|\" onclick=\"x|", "table thead tr th code th tbody tr td td" },
        { "# \\<b> {#id .class onclick=x}", "h2" },
        { "https://outside.invalid/ www.outside.invalid javascript:alert(1) mail@outside.invalid", "p" },
        { "<svg/onload=x>", "p" },
        { "- [ ] {onclick=x}\n- ~~x~~ ==y== ^z^ :smile:", "ul li li" },
        { "> \" onclick=\"x\n\n1. \\<b>\n\n***", "blockquote p ol li hr" },
        { new string('W', 12_000), "p" },
        { "$$x$$ `a`{=html} +++ ::: x", "p code" },
    };

    /// <summary>Refused, each with its code.</summary>
    public static TheoryData<string, string> Refused => new()
    {
        { "<script>x</script>", "CR0302" },
        { "a <b onclick=x>b</b>", "CR0302" },
        { "<!-- comment -->", "CR0302" },
        { "a <!-- comment --> b", "CR0302" },
        { "<?php x ?>", "CR0302" },
        { "<!DOCTYPE html>", "CR0302" },
        { "<![CDATA[x]]>", "CR0302" },
        { "</main>", "CR0302" },
        { "> <iframe src=x>\n", "CR0302" },
        { "|a|\n|-|\n|<b>x</b>|", "CR0302" },
        { "# <b>x</b>", "CR0302" },
        { "[x](javascript:alert(1))", "CR0303" },
        { "[x](JaVaScRiPt:alert(1))", "CR0303" },
        { "[x](java&#x73;cript:alert(1))", "CR0303" },
        { "[x](java&Tab;script:alert(1))", "CR0303" },
        { "[x](%6aavascript:alert(1))", "CR0303" },
        { "[x](data:text/html,y)", "CR0303" },
        { "[x](vbscript:y)", "CR0303" },
        { "[x](https://outside.invalid/)", "CR0303" },
        { "[x](//outside.invalid/)", "CR0303" },
        { "[x](\\\\outside.invalid\\y)", "CR0303" },
        { "[x](../index.html)", "CR0303" },
        { "[x](#r-x)", "CR0303" },
        { "[x]()", "CR0303" },
        { "[x][y]\n\n[y]: javascript:alert(1)", "CR0303" },
        { "[y]\n\n[y]: https://outside.invalid/", "CR0303" },
        { "![[x](javascript:y)](pictures/flange.jpg)", "CR0303" },
        { "[![the flange](pictures/flange.jpg)](javascript:y)", "CR0303" },
        { "<https://outside.invalid/>", "CR0303" },
        { "<javascript:alert(1)>", "CR0303" },
        { "<mail@outside.invalid>", "CR0303" },
        { "[x](part:../../x)", "CR0403" },
        { "[x](part:<b>)", "CR0403" },
        { "![x](https://outside.invalid/x.png)", "CR0304" },
        { "![x](//outside.invalid/x.png)", "CR0304" },
        { "![x](data:image/png;base64,x)", "CR0304" },
        { "![x](../secret.png)", "CR0304" },
        { "![x](%2e%2e/secret.png)", "CR0304" },
        { "![x](pictures/%2e%2e/%2e%2e/secret.png)", "CR0304" },
        { "![x](..%5csecret.png)", "CR0304" },
        { "![x](C:secret.png)", "CR0304" },
        { "![x](pictures/x.svg)", "CR0306" },
        { "![x](pictures/flange.jpg%00.png)", "CR0305" },
        { "![x](%252e%252e/secret.png)", "CR0305" },
        { "![](pictures/flange.jpg)", "CR0308" },
        { "&#x202E;x", "CR0008" },
        { "[&#x2066;x](part:gear-left)", "CR0008" },
        { "![the &#8206;flange](pictures/flange.jpg)", "CR0008" },
        { "|a|\n|-|\n|&#x200B;|", "CR0008" },
        { "![the flange](pictures/flange.jpg \"&#x202E;\")", "CR0008" },
        { "``` &#x202E;\nx\n```", "CR0008" },
        { "&#27;[31m", "CR0004" },
        { "[x](part:gear-left \"&#27;\")", "CR0004" },
        { "``` &#27;\nx\n```", "CR0004" },
    };

    [Theory]
    [MemberData(nameof(Taken))]
    public void Markdown_that_is_taken_has_no_elements_of_its_own_making(string markdown, string elements)
    {
        using var folder = new TemporaryFolder();
        var prose = Prose(folder, "T", markdown, out var found);
        Assert.DoesNotContain(found, d => d.Severity == Severity.Error);
        Assert.Equal(elements, string.Join(' ', prose.QuerySelectorAll("*").Select(e => e.LocalName)));
        Assert.Empty(PageShape.Harm(prose.Owner!));
        Assert.All(prose.QuerySelectorAll("*").SelectMany(e => e.Attributes), a => Assert.Contains(a.Name, Attributes));
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Markdown_that_leads_out_or_hides_something_is_refused_and_harmless_all_the_same(string markdown, string code)
    {
        using var folder = new TemporaryFolder();
        var prose = Prose(folder, "T", markdown, out var found);
        Assert.Contains(found, d => d.Code == code);
        Assert.All(found, d => Assert.True((HiddenCharacters.IndexIn(d.Message + d.Hint) < 0), d.Message));
        // Nobody builds from a library with errors; should somebody do it, the page is still safe.
        Assert.Empty(PageShape.Harm(prose.Owner!));
    }

    [Fact]
    public void Every_hidden_character_is_refused_in_a_note_raw_and_as_an_entity()
    {
        foreach (var hidden in HostileText.Hidden)
        {
            var entity = $"&#{char.ConvertToUtf32(hidden, 0)};";
            foreach (var text in new[] { hidden, $"`{hidden}`", entity })
            {
                using var folder = new TemporaryFolder();
                folder.Write("library.yaml", "library: lane\ntitle: T\n");
                folder.Write("hostile.md", $"---\ntitle: T\n---\na {text} b\n");
                Assert.Single(ContentReader.Read(folder.Path).Diagnostics, d => d.Code == FileCodes.HiddenCharacter.Code);
            }
        }
    }

    [Fact]
    public void A_title_is_text()
    {
        foreach (var text in HostileText.Shown)
        {
            using var folder = new TemporaryFolder();
            var page = Prose(folder, text, "x", out var found).Owner!;
            Assert.DoesNotContain(found, d => d.Severity == Severity.Error);
            Assert.Empty(PageShape.Harm(page));
            Assert.Equal(text, page.QuerySelector("h1")!.TextContent);
            Assert.StartsWith(text, page.Title!, StringComparison.Ordinal);
        }
    }

    private static IElement Prose(TemporaryFolder folder, string title, string markdown, out IReadOnlyList<Diagnostic> found)
    {
        Planting.Lay(folder, (_, _, _, was) => was);
        folder.Write("hostile.md", $"---\ntitle: {Planting.Quoted(title)}\n---\n{markdown}\n");
        var read = ContentReader.Read(folder.Path);
        found = read.Check(Options.Date);
        var site = SitePages.Render(read.Library!, Options with { ReadPicture = ContentPictures.In(folder.Path) });
        return PageShape.Parse(site.First(f => f.Path == "notes/hostile.html").AsText()).QuerySelector(".prose")!;
    }
}
