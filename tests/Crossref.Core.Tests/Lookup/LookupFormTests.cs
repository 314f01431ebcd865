using System.Text;
using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup;

public class LookupFormTests
{
    [Theory]
    [InlineData("OS-1203-02", "0S120302")]
    [InlineData("os 1203.02", "0S120302")]
    [InlineData("0s/12o3_02", "0S120302")]
    [InlineData("VM-IL1l", "VM1111")]
    [InlineData("6001-2RS", "60012RS")]
    [InlineData("Ø12", "012")]
    [InlineData(" - ", "")]
    public void A_number_has_one_normal_form(string text, string form) => Assert.Equal(form, NumberForm.Of(text));

    [Fact]
    public void An_overlong_number_is_cut() => Assert.Equal(NumberForm.Longest, NumberForm.Of(new string('A', 5000)).Length);

    [Theory]
    [InlineData("Bearing, fold roller", "bearing fold roller")]
    [InlineData("Grün Ærø Łódź Straße", "grun aero lodz strasse")]
    [InlineData("e\u0301te\u0301", "ete")]
    [InlineData("12×28×8 µm²", "12x28x8 um2")]
    [InlineData("ПРИВОД Ёж ΆΞΟΝΑΣ", "привод ёж Άξονασ")]
    [InlineData("ＯＳ－１２", "os 12")]
    [InlineData("軸受 6001", "軸受 6001")]
    [InlineData("…—“”", "")]
    public void Words_are_folded(string text, string words) => Assert.Equal(words, string.Join(' ', TextFold.Words(text)));

    [Fact]
    public void Folding_twice_changes_nothing()
    {
        for (var c = 0; c <= char.MaxValue; c++)
        {
            var folded = TextFold.Fold(((char)c).ToString());
            Assert.Equal(folded, TextFold.Fold(folded));
        }
    }

    [Fact]
    public void Whole_numbers_survive_their_coding()
    {
        int[] values = [0, 1, 31, 32, 1023, 1024, 1_000_000, int.MaxValue];
        var text = new StringBuilder();
        foreach (var value in values)
        {
            var before = text.Length;
            Radix.Append(text, value);
            Assert.Equal(text.Length - before, Radix.Length(value));
        }

        var at = 0;
        Assert.Equal(values, values.Select(_ => Radix.Read(text.ToString(), ref at)));
        Assert.Equal(text.Length, at);
    }

    [Fact]
    public void A_cut_number_is_damage()
    {
        var at = 0;
        Assert.Throws<LookupFormatException>(() => Radix.Read("z", ref at));
    }

    [Fact]
    public void Postings_survive_their_coding_in_pieces()
    {
        var random = new Random(3);
        var postings = Enumerable.Range(0, 2000).Select(_ => new Posting(random.Next(6), random.Next(1_000_000)))
            .Distinct().OrderByDescending(p => p.Level).ThenBy(p => p.Entry).ToList();
        var chunks = PostingCoder.Chunks(postings, 300).ToList();
        Assert.All(chunks, chunk => Assert.InRange(chunk.Text.Length, 1, 300));
        Assert.Equal(postings, chunks.SelectMany(chunk => PostingCoder.Decode(chunk.Text)));
        Assert.Equal(postings.Count, chunks.Sum(chunk => chunk.Count));
    }

    [Fact]
    public void Sets_survive_their_coding_in_pieces()
    {
        var random = new Random(4);
        var marks = Enumerable.Range(0, 5000).Select(i => i < 900 || random.Next(3) == 0).ToArray();
        var entries = Enumerable.Range(0, marks.Length).Where(i => marks[i]).ToList();
        var read = new bool[marks.Length];
        var chunks = RunCoder.Chunks(entries, 200).ToList();
        Assert.True(chunks.Count > 3);
        chunks.ForEach(chunk => RunCoder.Mark(chunk, read));
        Assert.Equal(marks, read);
    }

    [Fact]
    public void A_script_is_ascii_and_gives_its_body_back()
    {
        const string body = "a\"b\\c\td\ne \u2028 é 軸 </script> \ud83d\ude00";
        var script = ShardScript.Wrap("words/0/00", body);
        Assert.All(script, c => Assert.InRange(c, '\n', '~'));
        Assert.Equal(body, ShardScript.Unwrap(script));
        Assert.Equal(script.Length, ShardScript.Overhead("words/0/00") + ShardScript.EscapedLength(body));
    }

    [Theory]
    [InlineData("")]
    [InlineData("crossrefLookup(\"a\",\"cut")]
    [InlineData("somethingElse(\"a\",\"b\");\n")]
    public void A_damaged_script_is_refused(string script) =>
        Assert.Throws<LookupFormatException>(() => ShardScript.Unwrap(script));

    [Fact]
    public void Front_coded_rows_survive_in_shards_within_the_limit()
    {
        var random = new Random(5);
        var keys = Enumerable.Range(0, 3000)
            .Select(i => i % 50 == 0 ? new string('Q', 70) + i : random.Next(100_000).ToString("D6", null) + (i % 9 == 0 ? "é" : ""))
            .Order(StringComparer.Ordinal).ToList();
        var sink = new ShardSink();
        var writer = new TableWriter("words", 600, sink);
        keys.ForEach(key => writer.Add(key, "0A"));
        var shards = writer.Finish();
        Assert.Equal(shards.FirstKeys.Count, sink.Files.Count);
        Assert.All(sink.Files, file => Assert.InRange(file.Text.Length, 1, 600));
        Assert.Equal(keys, sink.Files.SelectMany(f => ShardStore.Decode(ShardScript.Unwrap(f.Text))).Select(row => row.Key));
    }

    [Fact]
    public void Keys_that_fall_are_a_programmers_error()
    {
        var writer = new TableWriter("words", 600, new ShardSink());
        writer.Add("b", "0");
        Assert.Throws<ArgumentException>(() => writer.Add("a", "0"));
    }

    [Fact]
    public void A_record_survives_without_control_characters()
    {
        var entry = SampleLibrary.Bench[0] with { Title = "Bearing\t\n  fold" };
        var read = RecordCoder.Decode(RecordCoder.Encode(entry));
        Assert.Equal("Bearing fold", read.Title);
        Assert.Equal(entry.Numbers, read.Numbers);
        Assert.Equal(entry.Families, read.Families);
        Assert.Equal(entry.Standing, read.Standing);
        Assert.Equal(300, RecordCoder.Decode(RecordCoder.Encode(entry with { Title = new string('x', 999) })).Title.Length);
    }

    [Theory]
    [InlineData("0S120302", "0S120302", Slip.None)]
    [InlineData("0S120303", "0S120302", Slip.Other)]
    [InlineData("0S12302", "0S120302", Slip.Missing)]
    [InlineData("0S1203002", "0S120302", Slip.Extra)]
    [InlineData("0S102302", "0S120302", Slip.Swapped)]
    [InlineData("0S210203", "0S120302", Slip.None)]
    internal void A_slip_is_named(string typed, string number, Slip slip) => Assert.Equal(slip, Slips.Between(typed, number));

    [Fact]
    public void A_slip_is_a_distance_of_one()
    {
        var random = new Random(6);
        for (var i = 0; i < 20_000; i++)
        {
            var a = Word();
            var b = random.Next(2) == 0 ? Word() : SampleLibrary.Spoil(random, a + "A");
            Assert.Equal(NaiveLookup.Distance(a, b) == 1, Slips.Between(a, b) != Slip.None);
        }

        string Word() => new([.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => (char)('A' + random.Next(3)))]);
    }
}
