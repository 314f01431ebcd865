using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Site.Pages;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Tests.Hostile;

/// <summary>Hostile names of files, and what may become one: ids.</summary>
public sealed class HostileFileTests
{
    private static readonly SiteOptions Options = new(new DateOnly(2026, 6, 1));

    private static string Long => new('n', 200);

    public static TheoryData<string> Pictures =>
    [
        "a\"b'c.jpg", "<img src=x onerror=globalThis.canary=1>.jpg", "%2e%2e%2fx.jpg", "%00.jpg", "a?b#c&d.jpg", "con.jpg", "nul.jpg", "trailing .jpg",
        "blank. .jpg", "ün 漢字 \U0001F527.JPG", "{{ 7 * 6 }}.jpg", "$(x) `x`;x|x.jpg", "-rf.jpg", Long + ".jpg", "a..jpg", "COM1.jpg", "x.html.jpg",
    ];

    [Theory]
    [MemberData(nameof(Pictures))]
    public void A_picture_of_any_name_gets_a_plain_one(string name)
    {
        using var folder = new TemporaryFolder();
        byte[] bytes = [1, 2, 3, (byte)name.Length];
        folder.Write("library.yaml", $"library: lane\ntitle: T\n---\npart: x\nkind: gear\nname: X\npictures: [{{file: {Planting.Quoted(name)}, shows: A}}]\n");
        folder.Write("n.md", $"---\ntitle: T\n---\n![A]({Uri.EscapeDataString(name)})\n");
        folder.Write(name, bytes);
        var read = ContentReader.Read(folder.Path);
        Assert.DoesNotContain(read.Check(Options.Date), d => d.Severity == Severity.Error);
        var site = SitePages.Render(read.Library!, Options with { ReadPicture = ContentPictures.In(folder.Path) }).ToDictionary(f => f.Path, StringComparer.Ordinal);
        foreach (var path in new[] { "parts/x.html", "notes/n.html" })
        {
            var page = PageShape.Parse(site[path].AsText());
            Assert.Empty(PageShape.Harm(page));
            var source = Assert.Single(page.QuerySelectorAll("img")).GetAttribute("src")!;
            Assert.Matches("^\\.\\./pictures/[0-9a-f]{16}\\.jpg$", source);
            Assert.Equal(bytes, site[source[3..]].Content.ToArray());
        }
    }

    [Theory]
    [InlineData("../x.jpg")]
    [InlineData("a/../../x.jpg")]
    [InlineData("/etc/x.jpg")]
    [InlineData("\\\\server\\x.jpg")]
    [InlineData("C:x.jpg")]
    [InlineData("javascript:x.jpg")]
    [InlineData("x.jpg.")]
    [InlineData("x.jpg ")]
    [InlineData("x.svg")]
    [InlineData("x.jpg/.")]
    [InlineData("./x.jpg")]
    [InlineData("a//x.jpg")]
    [InlineData("a/./x.jpg")]
    public void A_path_that_is_not_a_picture_of_the_folder_is_refused(string name)
    {
        using var folder = new TemporaryFolder();
        folder.Write("library.yaml", $"library: lane\ntitle: T\n---\npart: x\nkind: gear\nname: X\npictures: [{{file: {Planting.Quoted(name)}, shows: A}}]\n");
        folder.Write("x.jpg", "x");
        folder.Write("a/x.jpg", "x");
        var read = ContentReader.Read(folder.Path);
        Assert.Contains(read.Check(Options.Date), d => d.Severity == Severity.Error);
        Assert.Null(ContentPictures.In(folder.Path)(name));
    }

    [Theory]
    [InlineData("<b>")]
    [InlineData("a b")]
    [InlineData("a\"b")]
    [InlineData("%2e%2e")]
    [InlineData("con")]
    [InlineData("lpt1")]
    [InlineData("ünï")]
    [InlineData("a--b")]
    [InlineData("A")]
    [InlineData("a.")]
    [InlineData("a ")]
    [InlineData("0123456789012345678901234567890123456789x")]
    public void A_note_is_refused_unless_its_name_is_an_id(string name)
    {
        using var folder = new TemporaryFolder();
        folder.Write("library.yaml", "library: lane\ntitle: T\n");
        folder.Write(name + ".md", "---\ntitle: T\n---\nx\n");
        var read = ContentReader.Read(folder.Path);
        Assert.Contains(read.Check(Options.Date), d => d.Code is "CR0206" or "CR0207");
        Assert.All(SitePages.Render(read.Library!, Options), f => Assert.Matches("^([a-z0-9-]+/)*[a-z0-9-]+\\.[a-z0-9]+$", f.Path));
    }

    [Fact]
    public void No_character_but_small_letters_digits_and_dashes_passes_in_an_id()
    {
        var log = new DiagnosticLog();
        var checker = new ScalarChecker(log);
        var passed = new List<char>();
        for (var c = char.MinValue; c < char.MaxValue; c++)
        {
            var before = log.Found.Count;
            checker.CheckId(new ScalarNode(new Place("x.yaml", 1, 1), $"a{c}b"));
            if (log.Found.Count == before) passed.Add(c);
            Assert.Matches("^[a-z0-9-]+$", SafeName.Of($"a{c}b"));
        }
        Assert.Equal("-0123456789abcdefghijklmnopqrstuvwxyz", string.Concat(passed));
        Assert.All(log.Found, d => Assert.True((HiddenCharacters.IndexIn(d.Message + d.Hint) < 0), d.Message));
        foreach (var id in new[] { "a\n", "-a", "a-", "", "a\u0661", "\u212A" })
        {
            var before = log.Found.Count;
            checker.CheckId(new ScalarNode(new Place("x.yaml", 1, 1), id));
            Assert.Equal(before + 1, log.Found.Count);
        }
    }
}
