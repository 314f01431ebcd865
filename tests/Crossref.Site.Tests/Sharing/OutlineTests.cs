using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Histories;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Tests.Sharing;

public class OutlineTests
{
    [Theory]
    [InlineData("content")]
    [InlineData("tests/Crossref.Site.Tests/Sound")]
    public void Every_record_is_the_same_text_when_put_together_again(string folder)
    {
        var log = new DiagnosticLog();
        var texts = FolderTexts.Read(Path.Combine(Repository.Root, folder), log);
        Assert.Empty(log.Found);
        Assert.NotEmpty(texts.Records);
        Assert.All(texts.Records.Values, r => Assert.Equal(r.Text, r.Outline.Text));
        Assert.All(texts.Records.Values, r => Assert.Equal(r.Text, RecordHistory.Begin(r.Type, r.Text, "ferry-lane", "2026-02-11").Shown.Text));
        Assert.All(texts.Records.Values.Where(r => r.Type != RecordType.Note), r => Assert.DoesNotContain(r.Outline.Entries, e => e.Key == "="));
    }

    [Theory]
    [InlineData("part: a\nsize:\n  bore: 1 # x\n\n  # before\n  width: 2\n# end\n", "=part >size(=bore =width)")]
    [InlineData("family: a\nassemblies:\n- assembly: h\n  # first\n  positions:\n  - position: x\n    name: >\n      # not a comment\n\n      text\n  # last\n  - {position: y}\nnote: n\n", "=family >assemblies(-h(>positions(-x(=name) *y))) =note")]
    [InlineData("part: a\nnumbers: [A,\n  B]\nnote: \"one\n\n  two\"\n", "=part =numbers =note")]
    [InlineData("part: a\nchecks:\n  - one\n  - two\n", "=part =checks")]
    [InlineData("repair: a\nfound:\n  - {position: x, condition: ok}\n  - {position: x, condition: worn}\n", "=repair =found")]
    [InlineData("{part: a, kind: gear}\n", "=")]
    [InlineData("symptom: a\nlist:\n  - - x\n", "=symptom =list")]
    [InlineData("repair: a\nfitted:\n  -   part: p\n      position: x\n  # c\n  -   part: q\n      position: y\n", "=repair >fitted(-x(=position) -y(=position))")]
    public void A_record_is_taken_apart_by_its_keys(string text, string keys)
    {
        var outline = OutlineReader.Record(text);
        Assert.Equal(text, outline.Text);
        Assert.Equal(keys, Shown(outline.Entries));
    }

    private static string Shown(IEnumerable<Entry> entries) =>
        string.Join(' ', entries.Select(e => e.Key + (e.Children.Count > 0 ? $"({Shown(e.Children)})" : "")));

    [Fact]
    public void A_notes_body_is_one_piece()
    {
        var outline = OutlineReader.Note("---\ntitle: A\n# c\nabout: [b]\n---\nText.\n\n---\nMore.\n");
        Assert.Equal("---\ntitle: A\n# c\nabout: [b]\n---\nText.\n\n---\nMore.\n", outline.Text);
        Assert.Equal(["=title", "=about"], outline.Entries.Select(e => e.Key));
        Assert.Equal("---\nText.\n\n---\nMore.\n", outline.Tail);
    }
}
