using System.Text;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

public sealed class HostileSheetTests : IDisposable
{
    private readonly SheetLibrary _library = new();

    public HostileSheetTests() => _library.Write("library.yaml", "library: ferry-lane\ntitle: Ferry Lane\n");

    public void Dispose() => _library.Dispose();

    [Fact]
    public void A_sheet_that_says_it_is_huge_is_refused_unread()
    {
        using var stream = new Claimed(1L << 30);
        Assert.Contains("over 32 MB", _library.Plan(stream).Diagnostics.Single().Message, StringComparison.Ordinal);
        Assert.Equal(0, stream.Reads);
    }

    [Fact]
    public void A_sheet_without_an_end_is_refused_at_the_limit()
    {
        using var stream = new Claimed(null);
        Assert.Contains("over 32 MB", _library.Plan(stream).Diagnostics.Single().Message, StringComparison.Ordinal);
        Assert.InRange(stream.Reads, 1, 1_000);
    }

    [Fact]
    public void Ten_thousand_columns_and_endless_rows_are_refused()
    {
        Assert.Equal(["CR1201"], _library.Plan(new string(',', 10_000)).Diagnostics.Select(d => d.Code));
        Assert.Equal(["CR1201"], _library.Plan("kind,name,number\n" + string.Concat(Enumerable.Repeat("gear,Gear,1\n", SheetReader.MostRows + 5))).Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void Random_sheets_never_bring_it_down_and_never_a_formula_in()
    {
        var random = new Random(9);
        var accepted = 0;
        string[] pieces = ["kind", "gear", "Gear", "OS-1", "7", "x", ",", ";", "\t", "\n", "\"", "=1", "\0", "ü", "\r\n", "@x", "-2", "#REF!"];
        for (var i = 0; i < 400; i++)
        {
            var plan = _library.Plan("kind,name,number\n" + string.Concat(Enumerable.Range(0, random.Next(1, 3)).Select(_ => $"gear,{Cell()},{Cell()}\n")));
            if (plan.Changes.Count > 0) accepted++;
            Assert.All(plan.Changes, c => Assert.DoesNotMatch("(?m)^(name|numbers): \\[?[\"\\s]*[=@+-]", Encoding.UTF8.GetString(c.Content!)));
        }
        Assert.InRange(accepted, 20, 380);

        string Cell() => string.Concat(Enumerable.Range(0, random.Next(1, 3)).Select(_ => pieces[random.Next(pieces.Length)]));
    }

    private sealed class Claimed(long? length) : Stream
    {
        internal int Reads { get; private set; }

        public override bool CanRead => true;
        public override bool CanSeek => length is not null;
        public override bool CanWrite => false;
        public override long Length => length ?? throw new NotSupportedException();
        public override long Position { get; set; }
        public override int Read(byte[] buffer, int offset, int count)
        {
            Reads++;
            Array.Fill(buffer, (byte)'a', offset, count);
            return count;
        }
        public override void Flush() { }
        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();
        public override void SetLength(long value) => throw new NotSupportedException();
        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
