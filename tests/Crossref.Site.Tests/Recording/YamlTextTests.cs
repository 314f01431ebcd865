using Crossref.Site.Reading;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Recording;
using Crossref.Site.Tests.Hostile;

namespace Crossref.Site.Tests.Recording;

/// <summary>What is written reads back to the same tree, whatever text is in it.</summary>
public class YamlTextTests
{
    private static readonly string[] Pieces =
    [
        "a", "Z", "7", "007", "true", "null", "~", " ", "  ", "-", "--- ", "...", "? ", ": ", ":", " #", "#", ",", "[", "]", "{", "}", "&x", "*x", "!x", "|", ">", "'", "\"",
        "\\", "\\u0041", "%", "@", "`", "=", "<<", "\n", "\t", "ü", "漢", "\U0001F527", "\u00A0", "\u00BD", "é", "1.5", "2026-02-11", "<b>", "…", "/", "$(x)",
    ];

    public static TheoryData<string> Hostile => [.. HostileText.Shown];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void A_hostile_text_reads_back_as_it_was(string text) => ReadsBack(Tree(text, new Random(1)));

    [Fact]
    public void Twenty_thousand_random_texts_read_back_as_they_were()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 20_000; i++) ReadsBack(Tree(Text(random), random));
    }

    [Fact]
    public void A_text_that_is_refused_everywhere_is_written_so_that_the_reader_says_so()
    {
        foreach (var text in HostileText.Broken.Concat(HostileText.Hidden).Concat(HostileText.Halves))
        {
            var log = new DiagnosticLog();
            _ = YamlReader.Read("x.yaml", YamlText.Write(new MapForm().Add("note", "a" + text + "b").Map), log).ToList();
            Assert.Single(log.Found);
        }
    }

    [Theory]
    [InlineData("M. Orr", "M. Orr")]
    [InlineData("red book p. 54", "red book p. 54")]
    [InlineData("1.5", "1.5")]
    [InlineData("it's 12 x 28, 50 % worn; good", "it's 12 x 28, 50 % worn; good")]
    [InlineData("für 230 V ± 5", "für 230 V ± 5")]
    [InlineData("Runs: quiet", "\"Runs: quiet\"")]
    [InlineData("\"like\" new", "\"\\\"like\\\" new\"")]
    [InlineData("- 5", "\"- 5\"")]
    [InlineData("bin #4", "\"bin #4\"")]
    public void Quotes_stand_only_where_they_are_needed(string text, string written) =>
        Assert.Equal($"note: {written}\n", YamlText.Write(new MapForm().Add("note", text).Map));

    private static void ReadsBack(MapNode map)
    {
        var (log, text) = (new DiagnosticLog(), YamlText.Write(map));
        var documents = YamlReader.Read("x.yaml", text, log).ToList();
        Assert.True(log.Found.Count == 0 && documents.Count == 1, text);
        Assert.Equal(Shape(map), Shape(documents[0].Root!));
    }

    private static string Shape(Node node) => node switch
    {
        ScalarNode scalar => $"<{scalar.Text.Length}:{scalar.Text}>",
        ListNode list => $"[{string.Concat(list.Items.Select(Shape))}]",
        MapNode map => $"{{{string.Concat(map.Entries.Select(e => $"{e.Key.Length}:{e.Key}={Shape(e.Value)}"))}}}",
        _ => "refused",
    };

    private static MapNode Tree(string text, Random random)
    {
        Node value = new ScalarNode(default, text);
        var inner = new MapNode(default, [new MapEntry("key", default, value), new MapEntry(text.Length is > 0 and < 500 ? text : "other", default, value)]);
        if (inner.Entries[0].Key == inner.Entries[1].Key) inner = inner with { Entries = [inner.Entries[0]] };
        Node[] all = [value, inner, new ListNode(default, [value, value]), new ListNode(default, [inner, inner])];
        return new MapNode(default, [new MapEntry("claim", default, value), new MapEntry("x", default, all[random.Next(all.Length)]), new MapEntry("note", default, value)]);
    }

    private static string Text(Random random) => string.Concat(Enumerable.Range(0, random.Next(1, 9)).Select(_ => Pieces[random.Next(Pieces.Length)]));
}
