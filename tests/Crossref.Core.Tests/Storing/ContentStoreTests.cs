using System.Text;
using Crossref.Core.Storing;
using Crossref.Tests.Faults;

namespace Crossref.Core.Tests.Storing;

public sealed class ContentStoreTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("store").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    public static TheoryData<DiskFault> Faults => [.. Enum.GetValues<DiskFault>()];

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_failure_at_any_moment_leaves_all_changes_or_none(DiskFault fault)
    {
        var moments = Attempt(new FailingDisk(0, fault)).Count;
        Assert.True(moments > 20);
        var (none, all) = (0, 0);
        for (var moment = 1; moment <= moments; moment++)
        {
            Attempt(new FailingDisk(moment, fault));
            ContentStore.Open(_root, new Disk()).Dispose();
            var now = Records();
            if (now == Old) none++;
            else if (now == New) all++;
            else Assert.Fail($"{fault} at {moment}: {now}");
            Assert.Equal([".crossref/lock"], Files().Where(f => f.StartsWith(".crossref", StringComparison.Ordinal)));
        }
        Assert.True(none > 5 && all > 3, $"{none} {all}");
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_failure_while_an_interrupted_change_is_finished_can_be_finished_in_turn(DiskFault fault)
    {
        Reset();
        var decided = Enumerable.Range(1, 100).First(moment => { Attempt(new FailingDisk(moment, DiskFault.Pulled)); return File.Exists(Full(".crossref/journal")); });
        var counting = new FailingDisk(0, fault);
        ContentStore.Open(_root, counting).Dispose();
        Assert.True(counting.Count > 8);
        for (var moment = 1; moment <= counting.Count; moment++)
        {
            Attempt(new FailingDisk(decided, DiskFault.Pulled));
            Try(() => ContentStore.Open(_root, new FailingDisk(moment, fault)).Dispose());
            ContentStore.Open(_root, new Disk()).Dispose();
            Assert.Equal(New, Records());
        }
    }

    [Fact]
    public void A_change_after_one_that_stopped_half_way_loses_neither()
    {
        for (var moment = 1; moment <= 40; moment++)
        {
            Reset();
            using (var store = ContentStore.Open(_root, new FailingDisk(moment + 4, DiskFault.Refused)))
            {
                Try(() => store.Apply(Changes));
                var decided = Records() == New || File.Exists(Full(".crossref/journal"));
                store.Apply([Change("claims/later.yaml", "later")]);
                Assert.Equal("later", Text("claims/later.yaml"));
                File.Delete(Full("claims/later.yaml"));
                Assert.Equal(decided ? New : Old, Records());
            }
        }
    }

    [Theory]
    [InlineData("../out.yaml")]
    [InlineData("claims/../../out.yaml")]
    [InlineData("/tmp/out.yaml")]
    [InlineData("")]
    [InlineData("claims//x.yaml")]
    [InlineData("claims/./x.yaml")]
    [InlineData(".crossref/journal")]
    [InlineData(".crossref/next/0")]
    [InlineData(".CROSSREF/Lock")]
    [InlineData("claims/nul.yaml")]
    [InlineData("claims/LPT1")]
    [InlineData("claims/a:b.yaml")]
    [InlineData("claims/a\\b.yaml")]
    [InlineData("claims/a\nb.yaml")]
    [InlineData("claims/a\0b.yaml")]
    [InlineData("claims/a.yaml.")]
    [InlineData("claims/\ud800.yaml")]
    [InlineData("Claims/new.yaml")]
    [InlineData("claims/B.yaml")]
    [InlineData("claims")]
    [InlineData("claims/b.yaml/c.yaml")]
    [InlineData("linked/x.yaml")]
    public void A_path_that_cannot_be_kept_is_refused_and_nothing_is_changed(string path)
    {
        Reset();
        Directory.CreateDirectory(Full("outside"));
        Directory.CreateSymbolicLink(Full("linked"), Full("outside"));
        using var store = ContentStore.Open(_root, new Disk());
        Assert.Throws<StoreException>(() => store.Apply([Change("claims/fine.yaml", "fine"), Change(path, "x")]));
        Assert.Equal(Old, Records());
        store.Apply([Change("claims/fine.yaml", "fine")]);
        Assert.Equal("fine", Text("claims/fine.yaml"));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Full("outside")));
        Directory.Delete(Full("linked"));
    }

    [Fact]
    public void Two_changes_of_one_name_are_refused()
    {
        Reset();
        using var store = ContentStore.Open(_root, new Disk());
        Assert.Throws<StoreException>(() => store.Apply([Change("claims/x.yaml", "1"), Change("claims/X.yaml", "2")]));
        Assert.Equal(Old, Records());
    }

    [Theory]
    [InlineData("claims/b.yaml")]
    [InlineData("claims/B.yaml")]
    public void A_file_that_must_be_new_replaces_none(string path)
    {
        Reset();
        using var store = ContentStore.Open(_root, new Disk());
        Assert.Throws<StoreException>(() => store.Apply([Change(path, "x") with { MustBeNew = true }]));
        Assert.Equal(Old, Records());
    }

    [Fact]
    public void A_folder_that_somebody_works_in_is_refused_until_he_is_done()
    {
        Reset();
        using (ContentStore.Open(_root, new Disk())) Assert.Contains("Another", Assert.Throws<StoreException>(() => ContentStore.Open(_root, new Disk())).Message, StringComparison.Ordinal);
        ContentStore.Open(_root, new Disk()).Dispose();
    }

    [Fact]
    public void A_folder_that_is_not_there_is_not_made()
    {
        Assert.Throws<StoreException>(() => ContentStore.Open(Full("nowhere"), new Disk()));
        Assert.False(Directory.Exists(Full("nowhere")));
    }

    [Theory]
    [InlineData("../precious.txt")]
    [InlineData("linked/precious.txt")]
    public void A_journal_that_leads_out_of_the_folder_is_not_followed(string path)
    {
        Reset();
        var outside = Directory.CreateTempSubdirectory("outside").FullName;
        try
        {
            var content = Path.Combine(outside, "content");
            Directory.CreateDirectory(Path.Combine(content, ".crossref"));
            File.WriteAllText(Path.Combine(outside, "precious.txt"), "mine");
            Directory.CreateSymbolicLink(Path.Combine(content, "linked"), outside);
            File.WriteAllBytes(Path.Combine(content, ".crossref", "journal"), StoreJournal.Format([new FileChange(path, null)]));
            Assert.Throws<StoreException>(() => ContentStore.Open(content, new Disk()));
            Assert.Equal("mine", File.ReadAllText(Path.Combine(outside, "precious.txt")));
        }
        finally
        {
            Directory.Delete(outside, recursive: true);
        }
    }

    [Fact]
    public void A_damaged_journal_or_a_lost_new_file_stops_before_anything_is_deleted()
    {
        var decided = Enumerable.Range(1, 100).First(moment => { Attempt(new FailingDisk(moment, DiskFault.Pulled)); return File.Exists(Full(".crossref/journal")); });
        foreach (var damage in new Action[]
        {
            () => File.WriteAllText(Full(".crossref/journal"), File.ReadAllText(Full(".crossref/journal"))[..^3]),
            () => File.WriteAllText(Full(".crossref/journal"), ""),
            () => File.WriteAllText(Full(".crossref/next/0"), "rubbish"),
            () => File.Delete(Full(".crossref/next/0")),
        })
        {
            Attempt(new FailingDisk(decided, DiskFault.Pulled));
            damage();
            Assert.Contains("interrupted", Assert.Throws<StoreException>(() => ContentStore.Open(_root, new Disk())).Message, StringComparison.Ordinal);
            Assert.Equal(Old, Records());
        }
    }

    private static FileChange[] Changes =>
    [
        Change("claims/a/new.yaml", "new") with { MustBeNew = true }, Change("claims/b.yaml", "b, longer than before"), new("inbox/c.yaml", null), Change("claims/second.yaml", "second"),
    ];

    private const string Old = "claims/b.yaml=b;inbox/c.yaml=c;";
    private const string New = "claims/a/new.yaml=new;claims/b.yaml=b, longer than before;claims/second.yaml=second;";

    private static FileChange Change(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    private FailingDisk Attempt(FailingDisk disk)
    {
        Reset();
        Try(() =>
        {
            using var store = ContentStore.Open(_root, disk);
            store.Apply(Changes);
        });
        return disk;
    }

    private static StoreException? Try(Action action)
    {
        try
        {
            action();
            return null;
        }
        catch (StoreException e)
        {
            return e;
        }
    }

    private void Reset()
    {
        foreach (var folder in Directory.GetDirectories(_root)) Directory.Delete(folder, recursive: true);
        Directory.CreateDirectory(Full("claims"));
        Directory.CreateDirectory(Full("inbox"));
        File.WriteAllText(Full("claims/b.yaml"), "b");
        File.WriteAllText(Full("inbox/c.yaml"), "c");
    }

    private string Full(string path) => Path.Combine(_root, path);

    private string Text(string path) => File.ReadAllText(Full(path));

    private IEnumerable<string> Files() => Directory.EnumerateFiles(_root, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_root, f)).Order(StringComparer.Ordinal);

    private string Records() => string.Concat(Files().Where(f => !f.StartsWith(".crossref", StringComparison.Ordinal)).Select(f => $"{f}={Text(f)};"));
}
