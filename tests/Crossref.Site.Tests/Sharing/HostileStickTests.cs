using System.Text;
using Crossref.Core.Checking;
using Crossref.Site.Sharing.Histories;

namespace Crossref.Site.Tests.Sharing;

/// <summary>What comes on a stick is refused in words, and nothing here or beside it is touched.</summary>
public class HostileStickTests
{
    private const string Part = "kind: gear\nname: Gear\n";

    public static TheoryData<string, string, string> Sticks => new()
    {
        { "id up", "parts.yaml", $"part: ../../x\n{Part}" },
        { "id absolute", "parts.yaml", $"part: /etc/x\n{Part}" },
        { "id drive", "parts.yaml", $"part: c:x\n{Part}" },
        { "id device", "parts.yaml", $"part: con\n{Part}" },
        { "id mixed scripts", "parts.yaml", $"part: g\u0435ar-1\n{Part}" },
        { "id capitals", "parts.yaml", $"part: Gear-1\n{Part}" },
        { "library id", "library.yaml", "library: ../x\ntitle: X\n" },
        { "device file", "parts/aux.yaml", $"part: gear-9\n{Part}" },
        { "device file with ending", "com1.old.yaml", $"part: gear-9\n{Part}" },
        { "device folder", "nul/parts.yaml", $"part: gear-9\n{Part}" },
        { "trailing dot", "parts./gears.yaml", $"part: gear-9\n{Part}" },
        { "trailing blank", "parts /gears.yaml", $"part: gear-9\n{Part}" },
        { "backslash", "a\\..\\x.yaml", $"part: gear-9\n{Part}" },
        { "drive", "c:x.yaml", $"part: gear-9\n{Part}" },
        { "owner that is no id", "from/Third Shop/parts.yaml", $"part: gear-9\n{Part}" },
        { "capitals alone", "Gears.yaml", $"part: gear-9\n{Part}" },
        { "deep", "parts.yaml", "part: gear-9\n" + Part + "size: " + new string('[', 200) + new string(']', 200) + "\n" },
        { "alias bomb", "parts.yaml", "part: gear-9\n" + Part + "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n" },
        { "NUL", "parts.yaml", "part: gear-9\n" + Part + "note: a\0b\n" },
        { "hidden", "parts.yaml", "part: gear-9\n" + Part + "note: a\u202eb\n" },
        { "markup in a note", "notes/n.md", "---\ntitle: N\n---\n<script>alert(1)</script>\n" },
        { "no such type", "parts.yaml", "party: gear-9\n" },
        { "twice", "more.yaml", $"part: gear-1\n{Part}---\npart: gear-1\n{Part}" },
    };

    private static Copy Ours() => Copy.Of("ferry-lane").With("gears.yaml", $"part: gear-1\n{Part}").Note();

    private static Copy Stick() => Copy.Of("velm-house").With("gears.yaml", $"part: gear-1\n{Part}price: 9\n").With("bag.yaml", "bag: b-1\npart: gear-1\nquantity: 1\ngrade: runner\n");

    private static string Everything(string folder) => string.Join('\n', Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal).Select(f => f + (File.Exists(f) ? ": " + Convert.ToBase64String(File.ReadAllBytes(f)) : "")));

    private static void IsRefused(Copy ours, Copy stick)
    {
        var before = Everything(ours.Outside);
        var plan = ours.Plan(stick);
        Assert.True(plan.IsRefused);
        Assert.Empty(plan.Changes);
        Assert.Contains(plan.Diagnostics, d => d.Severity == Severity.Error && d.Place.File.StartsWith("the other copy", StringComparison.Ordinal) && d.Hint.Length > 0);
        Assert.Equal(before, Everything(ours.Outside));
    }

    [Fact]
    public void A_sound_stick_is_taken()
    {
        using var ours = Ours();
        using var stick = Stick();
        Assert.Contains("price: 9", (ours.Combine(stick), ours["gears.yaml"]).Item2, StringComparison.Ordinal);
        Assert.True(ours.Has("from/velm-house/bag.yaml"));
    }

    [Theory]
    [MemberData(nameof(Sticks))]
    public void A_hostile_stick_is_refused(string what, string file, string text)
    {
        Assert.NotEmpty(what);
        using var ours = Ours();
        using var stick = Stick().With(file, text);
        IsRefused(ours, stick);
    }

    [Fact]
    public void Text_that_is_not_UTF_8_is_refused()
    {
        using var ours = Ours();
        using var stick = Stick().With("parts.yaml", [.. Encoding.UTF8.GetBytes("part: gear-9\nname: "), 0xC3, 0x28, 0x0A]);
        IsRefused(ours, stick);
    }

    [Theory]
    [InlineData("parts.yaml")]
    [InlineData("notes/big.md")]
    [InlineData("pictures/big.png")]
    public void A_file_of_a_gigabyte_is_refused_unread(string file)
    {
        using var ours = Ours();
        using var stick = Stick().With(file, "");
        using (var big = new FileStream(Path.Combine(stick.Folder, file), FileMode.Open)) big.SetLength(1L << 30);
        var before = GC.GetAllocatedBytesForCurrentThread();
        IsRefused(ours, stick);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100L << 20);
    }

    [Theory]
    [InlineData("parts.yaml", false)]
    [InlineData("more", true)]
    public void A_link_out_of_the_folder_is_refused(string name, bool isFolder)
    {
        using var ours = Ours();
        using var stick = Stick();
        using var outside = new TemporaryFolder();
        outside.Write("secret.yaml", $"part: secret\n{Part}");
        if (isFolder) Directory.CreateSymbolicLink(Path.Combine(stick.Folder, name), outside.Path);
        else File.CreateSymbolicLink(Path.Combine(stick.Folder, name), Path.Combine(outside.Path, "secret.yaml"));
        IsRefused(ours, stick);
    }

    [Fact]
    public void A_linked_history_is_not_followed()
    {
        using var ours = Ours();
        using var stick = Stick();
        using var outside = Ours();
        Directory.CreateDirectory(Path.Combine(stick.Folder, ".crossref"));
        File.CreateSymbolicLink(Path.Combine(stick.Folder, HistoryFile.Path), Path.Combine(outside.Folder, HistoryFile.Path));
        Assert.Contains(ours.Plan(stick).Diagnostics, d => d.Message.Contains("is a link", StringComparison.Ordinal));
    }

    [Fact]
    public void A_history_that_unpacks_without_end_is_no_history()
    {
        using var packed = new MemoryStream();
        using (var zip = new System.IO.Compression.GZipStream(packed, System.IO.Compression.CompressionLevel.Optimal, leaveOpen: true))
        {
            var zeros = new byte[1 << 20];
            for (var i = 0; i < 300; i++) zip.Write(zeros);
        }
        var content = packed.ToArray();
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content));
        using var ours = Ours();
        using var stick = Stick().With(HistoryFile.Path, [.. Encoding.ASCII.GetBytes($"crossref history 1 {hash}\n"), .. content]);
        Assert.Contains(ours.Plan(stick).Diagnostics, d => d.Message.Contains("far larger", StringComparison.Ordinal));
    }

    [Fact]
    public void A_history_that_lies_brings_no_text_that_is_no_record()
    {
        using var ours = Ours();
        using var stick = ours.Again();
        // A history says that the record's name is something that stands for more than one line.
        var book = HistoryFile.Read(File.ReadAllBytes(Path.Combine(stick.Folder, HistoryFile.Path)), long.MaxValue, out _)!;
        var honest = book.Records["gear-1"];
        var name = Keys.Child(Keys.Top, "=name");
        var marks = honest.Marks.ToDictionary(m => m.Key, m => m.Value, StringComparer.Ordinal);
        marks[name] = [.. marks[name], new Mark("ffff", "name: Z\npart: ../../evil\n", "ferry-lane", "2026-02-11")];
        book.Records["gear-1"] = new RecordHistory(honest.Type, honest.Known.Append("ffff").ToHashSet(StringComparer.Ordinal), marks, honest.Spots);
        stick.With(HistoryFile.Path, HistoryFile.Write(book));
        var plan = ours.Combine(stick);
        Assert.Contains("name: Gear\n", ours["gears.yaml"], StringComparison.Ordinal);
        Assert.DoesNotContain("evil", ours["gears.yaml"], StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Changes, c => c.Path.Contains("..", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_written_with_other_capitals_is_the_same_folder()
    {
        using var ours = Ours().With("parts/one.yaml", $"part: one\n{Part}");
        using var stick = Copy.Of("ferry-lane").With("Parts/two.yaml", $"part: two\n{Part}").With("GEARS.yaml", $"part: three\n{Part}");
        ours.Combine(stick);
        Assert.True(ours.Has("parts/two.yaml"));
        Assert.Contains("part: three", ours["gears.yaml"], StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(ours.Folder, "Parts")));
    }
}
