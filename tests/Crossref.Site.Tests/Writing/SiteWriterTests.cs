using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Writing;

namespace Crossref.Site.Tests.Writing;

public sealed class SiteWriterTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("writer").FullName;

    private string Folder => Path.Combine(_root, "site");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_new_folder_gets_every_file_and_a_list_of_them()
    {
        var changes = Write(("index.html", "home"), ("parts/a.html", "a"));
        Assert.Equal(new SiteChanges(2, 2, 0), changes);
        Assert.Equal("a", File.ReadAllText(Path.Combine(Folder, "parts", "a.html")));
        Assert.Equal(["index.html", "parts/a.html"], File.ReadLines(Path.Combine(Folder, SiteWriter.ListName)).Select(l => l[66..]));
    }

    [Fact]
    public void Only_changed_files_are_written_and_stale_ones_removed_with_their_empty_folders()
    {
        Write(("index.html", "home"), ("same.html", "same"), ("old/gone.html", "gone"));
        var untouched = File.GetLastWriteTimeUtc(Path.Combine(Folder, "same.html"));
        Assert.Equal(new SiteChanges(2, 1, 1), Write(("index.html", "new home"), ("same.html", "same")));
        Assert.Equal(untouched, File.GetLastWriteTimeUtc(Path.Combine(Folder, "same.html")));
        Assert.Equal("new home", File.ReadAllText(Path.Combine(Folder, "index.html")));
        Assert.False(Directory.Exists(Path.Combine(Folder, "old")));
    }

    [Fact]
    public void A_page_that_somebody_deleted_comes_back()
    {
        Write(("index.html", "home"));
        File.Delete(Path.Combine(Folder, "index.html"));
        Assert.Equal(1, Write(("index.html", "home")).Written);
        Assert.True(File.Exists(Path.Combine(Folder, "index.html")));
    }

    [Fact]
    public void A_page_that_was_damaged_is_mended()
    {
        Write(("index.html", "home"), ("a.html", "a"));
        File.WriteAllText(Path.Combine(Folder, "index.html"), "ho");
        Assert.Equal(1, Write(("index.html", "home"), ("a.html", "a")).Written);
        Assert.Equal("home", File.ReadAllText(Path.Combine(Folder, "index.html")));
    }

    [Fact]
    public void A_folder_that_holds_something_else_is_refused_and_left_as_it_is()
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "taxes.txt"), "mine");
        var refused = Assert.Throws<SiteFolderException>(() => Write(("index.html", "home")));
        Assert.Contains("taxes.txt", refused.Message, StringComparison.Ordinal);
        Assert.Equal(["taxes.txt"], Directory.EnumerateFileSystemEntries(Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_foreign_file_beside_our_pages_stays_and_is_never_overwritten()
    {
        Write(("index.html", "home"));
        File.WriteAllText(Path.Combine(Folder, "about.html"), "mine");
        Write(("index.html", "home 2"));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Folder, "about.html")));
        Assert.Throws<SiteFolderException>(() => Write(("index.html", "home 3"), ("about.html", "ours")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Folder, "about.html")));
        Assert.Equal("home 2", File.ReadAllText(Path.Combine(Folder, "index.html")));
    }

    [Fact]
    public void A_list_that_leads_out_of_the_folder_removes_nothing_there()
    {
        Write(("index.html", "home"));
        var outside = Path.Combine(_root, "precious.txt");
        File.WriteAllText(outside, "mine");
        File.AppendAllText(Path.Combine(Folder, SiteWriter.ListName), new string('0', 64) + "  ../precious.txt\n");
        Write(("index.html", "home 2"));
        Assert.Equal("mine", File.ReadAllText(outside));
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_refused()
    {
        File.WriteAllText(Folder, "a file");
        Assert.Throws<SiteFolderException>(() => Write(("index.html", "home")));
        Assert.Equal("a file", File.ReadAllText(Folder));
    }

    [Fact]
    public void A_failure_while_the_pages_are_made_leaves_the_old_site_whole()
    {
        Write(("index.html", "home"), ("a.html", "a"));
        static IEnumerable<SiteFile> Failing()
        {
            yield return SiteFile.Text("index.html", "half");
            throw new InvalidOperationException("a template is wrong");
        }
        Assert.Throws<InvalidOperationException>(() => new SiteWriter(Folder, new Disk()).Write(Failing()));
        Assert.Equal("home", File.ReadAllText(Path.Combine(Folder, "index.html")));
        Assert.Equal("a", File.ReadAllText(Path.Combine(Folder, "a.html")));
        Assert.Equal(1, Write(("index.html", "home 2"), ("a.html", "a")).Written);
    }

    [Fact]
    public void A_first_build_that_failed_does_not_stand_in_the_way_of_the_next()
    {
        Assert.Throws<InvalidOperationException>(() => Write(("index.html", "one"), ("index.html", "two")));
        Assert.Equal(1, Write(("index.html", "home")).Written);
    }

    private SiteChanges Write(params (string Path, string Text)[] files) =>
        new SiteWriter(Folder, new Disk()).Write(files.Select(f => SiteFile.Text(f.Path, f.Text)));
}
