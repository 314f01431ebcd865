using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Pages;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Tests.Hostile;

/// <summary>Hostile text in every key of every record: shown as text, or refused with a diagnostic.</summary>
public sealed class HostileFieldTests
{
    private static readonly SiteOptions Options = new(new DateOnly(2026, 6, 1));

    private static readonly Lazy<IReadOnlyDictionary<string, SiteFile>> Twin = new(() => Render("harmless"));

    public static TheoryData<int> Texts => [.. Enumerable.Range(0, HostileText.Shown.Count)];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Text_that_is_taken_is_shown_and_does_nothing(int index)
    {
        var text = HostileText.Shown[index];
        var site = Render(text);
        Assert.Equal(Pages(Twin.Value), Pages(site));
        var (shown, expected) = (0, 0);
        foreach (var path in Pages(site))
        {
            var (page, twin) = (PageShape.Parse(site[path].AsText()), PageShape.Parse(Twin.Value[path].AsText()));
            Assert.Equal(PageShape.Of(twin), PageShape.Of(page));
            Assert.Empty(PageShape.Harm(page));
            shown += Times(page.DocumentElement.TextContent, text);
            expected += Times(twin.DocumentElement.TextContent, "harmless");
        }
        // Roles and orientations are shown with spaces for their dashes and slashes, so a few are not found as written.
        Assert.True(expected > 600, $"planted {expected} times");
        Assert.True(shown > 0.9 * expected, $"shown {shown} of {expected} times");
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void The_lookup_index_stays_strings(int index)
    {
        var scripts = Render(HostileText.Shown[index]).Values.Where(f => f.Path.StartsWith("lookup/", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(scripts);
        Assert.All(scripts, s => Assert.True(PageShape.IsPlainScript(s), s.Path));
    }

    [Fact]
    public void What_is_no_text_is_refused_in_every_key()
    {
        var keys = new HashSet<(string Map, string Key)>();
        Read((map, key, shape, was) =>
        {
            if (shape is not null && !IsFree(map, key, shape)) keys.Add((map, key));
            return was;
        }, out _);
        Assert.True(keys.Count > 60, $"only {keys.Count} keys");
        foreach (var text in new[] { "<b onclick=x>{{ 7 * 6 }}</b>", "../../x", "javascript:x" })
        {
            foreach (var at in keys)
            {
                Read((map, key, shape, was) => (map, key) == at && shape is not null && !IsFree(map, key, shape) ? text : was, out var found);
                Assert.True(found.Any(d => d.Severity == Severity.Error), $"{at.Map}: {at.Key} takes {text}");
            }
        }
    }

    [Fact]
    public void Controls_and_hidden_characters_are_refused_in_every_key()
    {
        foreach (var (text, code) in HostileText.Broken.Select(t => (t, FileCodes.ControlCharacter)).Concat(HostileText.Hidden.Select(t => (t, FileCodes.HiddenCharacter))))
        {
            var planted = 0;
            Read((map, key, shape, was) =>
            {
                if (shape is not { Kind: ValueKind.Text or ValueKind.Word or ValueKind.Reference or ValueKind.Date or ValueKind.OpenWord }) return was;
                planted++;
                return was + text + "x";
            }, out var found);
            Assert.True(planted > 150);
            Assert.Equal(planted, found.Count(d => d.Code == code.Code));
            Assert.All(found, d => Assert.True((HiddenCharacters.IndexIn(DiagnosticText.Format(d).Replace('\n', ' ')) < 0), d.Message));
        }
    }

    [Fact]
    public void Joiners_are_refused_behind_letters_and_digits_that_take_none()
    {
        foreach (var joiner in HostileText.Joiners)
        {
            var planted = 0;
            Read((_, _, shape, was) =>
            {
                if (shape is not { Kind: ValueKind.Text }) return was;
                planted++;
                return was + "1" + joiner;
            }, out var refused);
            Assert.True(planted > 60);
            Assert.Equal(planted, refused.Count(d => d.Code == FileCodes.HiddenCharacter.Code));
        }
    }

    [Fact]
    public void Words_made_up_as_keys_may_hold_no_hidden_character()
    {
        foreach (var text in HostileText.Broken.Concat(HostileText.Hidden).Concat(HostileText.Joiners))
        {
            var planted = 0;
            Read((_, _, shape, was) =>
            {
                if (shape is not null) return was;
                planted++;
                return was + text;
            }, out var found);
            Assert.True(planted > 3);
            Assert.Equal(planted, found.Count(d => d.Code == FileCodes.HiddenCharacter.Code || d.Code == FileCodes.ControlCharacter.Code));
        }
    }

    [Fact]
    public void A_key_that_nobody_knows_is_refused_and_quoted_harmlessly()
    {
        foreach (var text in HostileText.Shown.Concat(HostileText.Broken).Concat(HostileText.Halves).Concat(HostileText.Hidden).Where(t => t.Length < 1000))
        {
            using var folder = new TemporaryFolder();
            folder.Write("x.yaml", $"library: lane\ntitle: T\n? {Planting.Quoted(text)}\n: x\n---\n? {Planting.Quoted(text)}\n: x\n");
            var found = ContentReader.Read(folder.Path).Check(Options.Date);
            Assert.True(found.Count(d => d.Severity == Severity.Error) >= 2);
            Assert.All(found, d => Assert.True((HiddenCharacters.IndexIn(d.Message + d.Hint) < 0), d.Message));
        }
    }

    [Fact]
    public void A_value_written_over_several_lines_is_one()
    {
        Read((_, key, _, was) => key == "name" ? was + "\n  Fits\t\n  nothing " : was, out _, library =>
            Assert.All(library.Parts.Values, p => Assert.EndsWith(" Fits nothing", p.Name, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_comparison_notices_text_that_was_not_escaped()
    {
        var clean = PageShape.Parse(Twin.Value["parts/brg-os-1203.html"].AsText());
        Assert.Empty(PageShape.Harm(clean));
        // The last ones are text in any page; the others must change its shape or be harmful by themselves.
        foreach (var text in HostileText.Shown.Where(t => t.Contains('<', StringComparison.Ordinal) && t[^1] != '<' && !t.StartsWith("{{", StringComparison.Ordinal)))
        {
            var page = PageShape.Parse(Twin.Value["parts/brg-os-1203.html"].AsText().Replace("harmless", text, StringComparison.Ordinal));
            Assert.NotEqual(PageShape.Of(clean), PageShape.Of(page));
        }
        foreach (var harm in new[]
        {
            "<script>x</script>", "<p style='x'>", "<p onclick='x'>", "<a href='javascript:x'>", "<a href=' java\tscript:x'>", "<img src='//outside.invalid/x'>",
            "<a href='https://outside.invalid/'>", "<base href='x'>", "<meta http-equiv='refresh' content='0'>", "<iframe></iframe>",
        })
            Assert.NotEmpty(PageShape.Harm(PageShape.Parse(Twin.Value["index.html"].AsText().Replace("</main>", harm + "</main>", StringComparison.Ordinal))));
        Assert.NotEmpty(PageShape.Harm(PageShape.Parse(Twin.Value["index.html"].AsText().Replace("img-src 'self'", "img-src *", StringComparison.Ordinal))));
        Assert.False(PageShape.IsPlainScript(SiteFile.Text("x", "crossrefLookup(\"a\",\"\");canary=1;//\");\n")));
        Assert.False(PageShape.IsPlainScript(SiteFile.Text("x", "crossrefLookup(\"a\",\"é\");\n")));
    }

    // A path to a picture is text, but there must be such a file.
    private static bool IsFree(string map, string key, ValueShape shape) =>
        shape.Kind is ValueKind.Text or ValueKind.OpenWord && (map, key) != ("picture", "file");

    private static IReadOnlyDictionary<string, SiteFile> Render(string text)
    {
        IReadOnlyDictionary<string, SiteFile>? site = null;
        Read((map, key, shape, was) => shape is null || IsFree(map, key, shape) ? was + text : was, out var found,
            library => site = SitePages.Render(library, Options).ToDictionary(f => f.Path, StringComparer.Ordinal));
        Assert.DoesNotContain(found, d => d.Severity == Severity.Error);
        return site!;
    }

    private static void Read(Planting.Change change, out IReadOnlyList<Diagnostic> found, Action<Core.Records.Library>? then = null)
    {
        using var folder = new TemporaryFolder();
        Planting.Lay(folder, change);
        var read = ContentReader.Read(folder.Path);
        found = read.Check(Options.Date);
        then?.Invoke(read.Library!);
    }

    private static IEnumerable<string> Pages(IReadOnlyDictionary<string, SiteFile> site) => site.Keys.Where(p => p.EndsWith(".html", StringComparison.Ordinal));

    private static int Times(string text, string piece)
    {
        var times = 0;
        for (var at = text.IndexOf(piece, StringComparison.Ordinal); at >= 0; at = text.IndexOf(piece, at + piece.Length, StringComparison.Ordinal)) times++;
        return times;
    }
}
