using Crossref.Site.Pages;
using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Tests.Pages;

public sealed class TemplateTests
{
    [Theory]
    [InlineData("{{ page.nothing }}", 1, 9, "nothing")]
    [InlineData("\n\n{{ if }}", 3, 1, "")]
    [InlineData("\n{{ include 'missing.html' }}", 2, 4, "missing.html")]
    [InlineData("{{ nobody }}", 1, 4, "nobody")]
    [InlineData("\n{{ 'a' | regex.match '(' }}", 2, 1, "")]
    [InlineData("\n{{ 'a' | object.eval }} {{ '}}' | object.eval_template }}{{ a.b.c }}", 2, 1, "")]
    [InlineData("{{ include 'note.html' }}", 1, 1, "")]
    [InlineData("{{ for x in 1..2 }}\n", 1, 1, "")]
    [InlineData("<p>{{ page.title }\n", 1, 1, "")]
    public void A_broken_template_is_named_with_its_line(string template, int line, int column, string says)
    {
        using var folder = new TemporaryFolder();
        folder.Write("note.html", template);
        var problem = Assert.Throws<TemplateProblemException>(() => Render(folder).ToList());
        Assert.Equal(Path.Combine(folder.Path, "note.html"), problem.File);
        Assert.Equal(line, problem.Line);
        Assert.True(problem.Column >= column, problem.Message);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.StartsWith($"{problem.File}:{line}:", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ page.about[0].text | object.eval_template }}")]
    [InlineData("{{ object.eval '1 + 1' }}")]
    public void A_template_cannot_run_text_as_a_template(string template)
    {
        using var folder = new TemporaryFolder();
        folder.Write("note.html", template);
        var problem = Assert.Throws<TemplateProblemException>(() => Render(folder).ToList());
        Assert.Contains("eval", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_layout_cannot_lose_the_content_security_policy()
    {
        var shipped = File.ReadAllText(Path.Combine(Repository.Root, "site-template", "layout.html"));
        var policy = shipped.Split('\n').Single(l => l.Contains("Content-Security-Policy", StringComparison.Ordinal)) + "\n";
        var lost = shipped.Replace(policy, "", StringComparison.Ordinal);
        foreach (var layout in new[] { lost, shipped.Replace("; img-src 'self' data:", "; img-src *", StringComparison.Ordinal), lost.Replace("</head>", policy + "</head>", StringComparison.Ordinal) })
        {
            using var folder = new TemporaryFolder();
            folder.Write("layout.html", layout);
            var problem = Assert.Throws<TemplateProblemException>(() => Render(folder).ToList());
            Assert.StartsWith(Path.Combine(folder.Path, "layout.html") + ":1:1: every page must begin its head", problem.Message, StringComparison.Ordinal);
        }
        using var own = new TemporaryFolder();
        own.Write("layout.html", shipped.Replace("<body", "<!-- our own --><body", StringComparison.Ordinal));
        Assert.Contains("<!-- our own -->", Render(own).First().AsText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_replaces_the_shipped_files_one_by_one()
    {
        using var folder = new TemporaryFolder();
        folder.Write("remark.html", "{{ if $1 }}<p class=\"ours\">{{ $1 }}</p>{{ end }}");
        folder.Write("crossref.css", "body { color: red }");
        folder.Write("extra.html", "not a template of ours");
        var site = Render(folder).ToDictionary(f => f.Path, StringComparer.Ordinal);
        Assert.Equal("body { color: red }", site["crossref.css"].AsText());
        Assert.Contains("<p class=\"ours\">By the window.</p>", site["machines/folder.html"].AsText(), StringComparison.Ordinal);
        Assert.DoesNotContain("extra.html", site.Keys);
    }

    [Fact]
    public void A_template_cannot_write_markup_by_itself()
    {
        using var folder = new TemporaryFolder();
        folder.Write("remark.html", "{{ x = '<i>' + 'a' + '</i>'; x }}{{ capture y }}<u>{{ end }}{{ y }}{{ ['<s>'] }}");
        var page = Render(folder).First(f => f.Path == "machines/folder.html").AsText();
        Assert.Contains("&lt;i&gt;a&lt;/i&gt;&lt;u&gt;", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<s>", page, StringComparison.Ordinal);
    }

    private static IEnumerable<SiteFile> Render(TemporaryFolder folder) =>
        SitePages.Render(SmallLibrary.Read(), SmallLibrary.Options with { TemplateFolder = folder.Path });
}
