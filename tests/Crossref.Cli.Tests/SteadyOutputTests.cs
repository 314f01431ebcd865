using System.Security.Cryptography;

namespace Crossref.Cli.Tests;

/// <summary>Output changes only for a reason, and a build that is cut short leaves the old site whole.</summary>
public sealed class SteadyOutputTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("steady").FullName;

    private string Content => Path.Combine(_folder, "content");

    private string Site => Path.Combine(_folder, "site");

    public SteadyOutputTests() => Copy(Tool.Demo, Content);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Two_runs_in_two_folders_give_the_same_bytes()
    {
        var other = Directory.CreateDirectory(Path.Combine(_folder, "somewhere else", "ünder")).FullName;
        Copy(Tool.Demo, Path.Combine(other, "content"));
        Build(_folder);
        Build(other);
        Assert.Equal(Hashes(Site), Hashes(Path.Combine(other, "site")));
    }

    [Fact]
    public void The_date_is_the_only_clock()
    {
        Build(_folder);
        var before = Hashes(Site);
        Tool.Run(_folder, "build", "--date", "2026-11-26");
        Assert.NotEqual(before, Hashes(Site));
    }

    [Fact]
    public void After_one_changed_claim_only_the_files_that_say_something_else_are_written()
    {
        Build(_folder);
        var before = Hashes(Site);
        foreach (var file in before.Keys) File.SetLastWriteTimeUtc(Path.Combine(Site, file), new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        Edit("claims/finishing.yaml", "Runs quieter than the listed one. Reopened, grease still soft.", "Runs quieter than the listed one. Reopened, grease soft and clean.");
        var run = Tool.Run(_folder, "build", "--date", "2026-11-25", "--json");
        var after = Hashes(Site);
        var different = after.Where(p => before[p.Key] != p.Value).Select(p => p.Key).ToList();
        var written = after.Keys.Where(f => File.GetLastWriteTimeUtc(Path.Combine(Site, f)).Year != 2020);
        Assert.Equal(different, written);
        Assert.Equal(different.Count - 1, (int)run.Json["written"]!); // the list of files is not one of the pages
        Assert.InRange(different.Count, 2, before.Count / 10);
    }

    [Fact]
    public void A_page_whose_record_is_gone_is_removed_and_a_foreign_file_stays()
    {
        var note = Path.Combine(Content, "notes", "short-lived.md");
        File.WriteAllText(note, "---\ntitle: Short lived\nabout: [squeal]\n---\nText.\n");
        Build(_folder);
        Assert.True(File.Exists(Path.Combine(Site, "notes", "short-lived.html")));
        File.WriteAllText(Path.Combine(Site, "notes", "mine.txt"), "mine");
        File.Delete(note);
        Build(_folder);
        Assert.False(File.Exists(Path.Combine(Site, "notes", "short-lived.html")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Site, "notes", "mine.txt")));
    }

    [Fact]
    public void A_long_build_says_how_far_it_is()
    {
        AddManyParts();
        Assert.Contains("1,000 files made", Tool.Run(_folder, "build").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_build_that_is_killed_leaves_the_old_site_or_the_new_one_page_by_page_and_the_next_build_finishes()
    {
        Build(_folder);
        var old = Hashes(Site);
        Edit("library.yaml", "title: Ferry Lane Print Room", "title: Ferry Lane Print Room, back room");
        Copy(Content, Path.Combine(_folder, "twin", "content"));
        Build(Path.Combine(_folder, "twin"));
        var wanted = Hashes(Path.Combine(_folder, "twin", "site"));
        var interrupted = 0;
        var random = new Random(11);
        for (var i = 0; i < 12; i++)
        {
            using (var process = Tool.Start(_folder, "build", "--date", "2026-11-25"))
            {
                // The whole build takes about a second; a kill may come before it begins, amid its work, or after its end.
                Thread.Sleep(random.Next(100, 900));
                if (!process.HasExited) interrupted++;
                process.Kill();
                process.WaitForExit();
            }
            var now = Hashes(Site);
            Assert.All(now.Keys.Except([SiteList]), file => Assert.True(now[file] == old.GetValueOrDefault(file) || now[file] == wanted.GetValueOrDefault(file), file));
            Assert.Empty(old.Keys.Intersect(wanted.Keys).Except(now.Keys));
        }
        Assert.NotEqual(0, interrupted);
        Build(_folder);
        Assert.Equal(wanted, Hashes(Site));
    }

    [Fact]
    public void A_build_that_is_killed_before_all_pages_are_made_has_touched_none()
    {
        AddManyParts(); // so that there is time to kill it
        Build(_folder);
        var old = Hashes(Site);
        Edit("library.yaml", "title: Ferry Lane Print Room", "title: Ferry Lane Print Room, back room");
        var staging = Path.Combine(Site, ".crossref-next");
        using (var process = Tool.Start(_folder, "build", "--date", "2026-11-25"))
        {
            while (!process.HasExited && !(Directory.Exists(staging) && Directory.EnumerateFiles(staging).Take(20).Count() == 20)) Thread.Sleep(1);
            Assert.False(process.HasExited);
            process.Kill();
            process.WaitForExit();
        }
        Assert.True(Directory.Exists(staging));
        Assert.Equal(old, Hashes(Site));
        Build(_folder);
        Assert.False(Directory.Exists(staging));
        Assert.NotEqual(old, Hashes(Site));
    }

    private const string SiteList = "crossref-files.sha256";

    private static void Build(string folder)
    {
        var run = Tool.Run(folder, "build", "--date", "2026-11-25");
        Assert.True(run.ExitCode == 0, run.Error);
    }

    private void AddManyParts()
    {
        var parts = Enumerable.Range(0, 1200).Select(i => $"part: part-{i}\nkind: bearing\nname: Bearing {i}\nmaker: Velm\nnumbers: [LONG-{i:0000}]\n");
        File.WriteAllText(Path.Combine(Content, "many.yaml"), string.Join("---\n", parts));
    }

    private void Edit(string file, string before, string after)
    {
        var path = Path.Combine(Content, file);
        var text = File.ReadAllText(path);
        Assert.Contains(before, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(before, after, StringComparison.Ordinal));
    }

    // What is being made is no part of the site.
    private static SortedDictionary<string, string> Hashes(string site) => new(
        Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(site, f).Replace('\\', '/'))
            .Where(f => !f.StartsWith(".crossref-next", StringComparison.Ordinal) && !f.EndsWith(".next", StringComparison.Ordinal))
            .ToDictionary(f => f, f => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(Path.Combine(site, f))))),
        StringComparer.Ordinal);

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }
    }
}
