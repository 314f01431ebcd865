using Crossref.Core.Checking;

namespace Crossref.Site.Tests.Reading;

public class RobustnessTests
{
    // What breaks readers: structure, quotes, controls, half characters, deep and long things.
    private static readonly byte[][] Poison =
    [
        "\t"u8.ToArray(), "\0"u8.ToArray(), "- "u8.ToArray(), ": "u8.ToArray(), "\n---\n"u8.ToArray(), "\n...\n"u8.ToArray(), "["u8.ToArray(), "]"u8.ToArray(),
        "{"u8.ToArray(), "}"u8.ToArray(), "\""u8.ToArray(), "'"u8.ToArray(), "#"u8.ToArray(), "&a "u8.ToArray(), "*a"u8.ToArray(), "!!x "u8.ToArray(), "|\n"u8.ToArray(),
        ">-\n"u8.ToArray(), "? "u8.ToArray(), "%"u8.ToArray(), "\\u"u8.ToArray(), "\"\\uD800\""u8.ToArray(), "<<: *a\n"u8.ToArray(), ","u8.ToArray(), "~"u8.ToArray(), "\r"u8.ToArray(),
        [0xFF], [0xC3], [0xE2, 0x80], [0xEF, 0xBB, 0xBF], "/"u8.ToArray(), "../"u8.ToArray(), "99999999999999999999999999999999"u8.ToArray(), "-1"u8.ToArray(), "<b>"u8.ToArray(),
        "[x](javascript:y)"u8.ToArray(), "![](%zz)"u8.ToArray(), "[["u8.ToArray(), "null"u8.ToArray(), ""u8.ToArray(),
    ];

    [Theory]
    [InlineData(1, 400)]
    [InlineData(2, 400)]
    public void No_bytes_make_reading_or_checking_throw(int seed, int rounds)
    {
        var random = new Random(seed);
        var files = Directory.GetFiles(Fixture.Sound, "*.*").Order(StringComparer.Ordinal).Select(f => (Name: Path.GetFileName(f), Bytes: File.ReadAllBytes(f))).ToList();
        for (var round = 0; round < rounds; round++)
        {
            using var folder = new TemporaryFolder();
            var victim = random.Next(files.Count);
            foreach (var (file, index) in files.Select((f, i) => (f, i)))
                folder.Write(file.Name, index == victim ? Mutate(file.Bytes, random) : file.Bytes);
            Assert.Null(Record.Exception(() => Fixture.Diagnostics(folder.Path)));
        }
    }

    [Fact]
    public void A_family_whose_id_holds_slashes_is_one_mistake()
    {
        using var folder = new TemporaryFolder();
        folder.Write("x.yaml", """
            library: lane
            title: T
            ---
            family: a/b/c
            name: A
            maker: M
            assemblies: [{assembly: d, name: D, positions: [{position: e, name: E, kind: gear, damages-next: [f]}, {position: f, name: F, kind: gear}]}]
            """);
        Assert.Equal(1, Fixture.Diagnostics(folder.Path).Split(": error ").Length - 1);
    }

    [Fact]
    public void A_deeply_nested_file_is_refused_quickly()
    {
        using var folder = new TemporaryFolder();
        folder.Write("x.yaml", "part: x\nname: " + new string('[', 900_000));
        Assert.Contains("CR0106", Fixture.Diagnostics(folder.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_of_nothing_but_brackets_is_read()
    {
        using var folder = new TemporaryFolder();
        folder.Write("library.yaml", "library: lane\ntitle: T\n");
        folder.Write("n.md", "---\ntitle: T\n---\n" + new string('[', 20_000) + new string('>', 2_000) + "\n" + string.Concat(Enumerable.Repeat("> ", 2_000)) + "x\n");
        Assert.Null(Record.Exception(() => Fixture.Diagnostics(folder.Path)));
    }

    [Fact]
    public void Reading_twice_gives_the_same_diagnostics_in_the_same_order()
    {
        using var folder = new TemporaryFolder();
        foreach (var name in Fixture.Names.Where(n => Directory.Exists(Path.Combine(Fixture.Folder, n, "input")) && !n.StartsWith("CR000", StringComparison.Ordinal)))
            folder.Lay(Path.Combine(Fixture.Folder, name, "input"), (_, bytes) => bytes);
        Assert.Equal(Fixture.Diagnostics(folder.Path), Fixture.Diagnostics(folder.Path));
    }

    [Fact]
    public void Diagnostics_are_sorted_and_each_appears_once()
    {
        var place = new Core.Records.Place("a.yaml", 2, 1);
        var (a, b, c) = (new Diagnostic("CR0002", Severity.Error, place, "m", "h"), new Diagnostic("CR0001", Severity.Error, place, "m", "h"),
            new Diagnostic("CR0009", Severity.Warning, place with { Line = 1 }, "m", "h"));
        Assert.Equal([c, b, a], DiagnosticOrder.Sort([a, b, a, c]));
    }

    private static byte[] Mutate(byte[] bytes, Random random)
    {
        var result = bytes.ToList();
        for (var change = random.Next(1, 4); change > 0; change--)
        {
            var at = random.Next(result.Count + 1);
            var length = Math.Min(random.Next(0, 12), result.Count - at);
            switch (random.Next(4))
            {
                case 0:
                    result.RemoveRange(at, length);
                    break;
                case 1:
                    result.InsertRange(at, result.GetRange(at, length));
                    break;
                case 2 when at < result.Count:
                    result[at] = (byte)random.Next(256);
                    break;
                default:
                    result.InsertRange(at, Poison[random.Next(Poison.Length)]);
                    break;
            }
        }
        return [.. result];
    }
}
