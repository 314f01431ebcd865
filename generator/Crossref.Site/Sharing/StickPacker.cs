using System.Globalization;
using System.Net;
using System.Text;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Writing;

namespace Crossref.Site.Sharing;

/// <summary>
/// Lays out a stick: the site, the records, the tool for each system, an update script for each, a manifest, and last
/// of all the page to start from. On its own stick it exchanges what changed.
/// </summary>
public sealed class StickPacker(string folder, IDisk disk)
{
    private readonly string _folder = Path.GetFullPath(folder);

    /// <summary>Packs.</summary>
    /// <param name="plan">What goes on it.</param>
    /// <param name="site">The site's files.</param>
    /// <exception cref="SiteFolderException">The stick cannot be written, holds files of somebody else, or records that would be lost.</exception>
    public StickReport Pack(StickPlan plan, IEnumerable<SiteFile> site)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(site);
        try
        {
            var content = StickContent.Files(plan.Content);
            CheckPlace(plan.Content);
            CheckStick(plan, content);
            var tools = StickLayout.Tools.Where(t => plan.Tools is not null && File.Exists(Path.Combine(plan.Tools, t.Path))).ToList();
            var files = Files(plan, site, content, tools);
            var changes = new SiteWriter(_folder, disk, StickLayout.Manifest) { Last = StickLayout.Start, Flushes = true }.Write(files);
            LetRun();
            return new StickReport(changes, [.. tools.Select(t => t.System)]);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException && e is not SiteFolderException and not StoreException)
        {
            throw new SiteFolderException($"{_folder} could not be packed: {e.Message}", "Check that the stick is in and has room, and pack again.", e);
        }
    }

    private IEnumerable<SiteFile> Files(StickPlan plan, IEnumerable<SiteFile> site, IReadOnlyList<string> content, IReadOnlyList<(string Path, string System)> tools)
    {
        foreach (var file in site) yield return file with { Path = StickLayout.Site + file.Path };
        foreach (var path in content) yield return new SiteFile(StickLayout.Content + path, disk.Read(Path.Combine(plan.Content, path)));
        foreach (var (path, _) in tools) yield return new SiteFile(StickLayout.Tool + path, disk.Read(Path.Combine(plan.Tools!, path)));
        foreach (var (path, source) in StickLayout.Updates)
        {
            var text = Shipped(source);
            yield return SiteFile.Text(path, path.EndsWith(".cmd", StringComparison.Ordinal) ? text.ReplaceLineEndings("\r\n") : text);
        }
        yield return SiteFile.Text(StickLayout.Start, StartPage(plan, tools));
    }

    private static string StartPage(StickPlan plan, IReadOnlyList<(string Path, string System)> tools) => Shipped(StickLayout.Start)
        .Replace("{{tools}}", tools.Count == 0
            ? "<tr><th scope=\"row\">no tool</th><td>The tool was not packed. The reference opens all the same.</td></tr>"
            : string.Join('\n', tools.Select(t => $"<tr><th scope=\"row\"><code>tool/{t.Path}</code></th><td>The tool for {t.System}.</td></tr>")), StringComparison.Ordinal)
        .Replace("{{date}}", plan.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), StringComparison.Ordinal)
        .Replace("{{title}}", WebUtility.HtmlEncode(plan.Library.Title), StringComparison.Ordinal);

    private static string Shipped(string name)
    {
        using var reader = new StreamReader(typeof(StickPacker).Assembly.GetManifestResourceStream("stick/" + name)!, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private void CheckPlace(string content)
    {
        var inner = Path.GetFullPath(content) + Path.DirectorySeparatorChar;
        if ((_folder + Path.DirectorySeparatorChar).StartsWith(inner, StringComparison.Ordinal))
            throw new SiteFolderException($"{_folder} lies in the content folder: the stick would pack itself.", "Choose a folder outside of it.");
    }

    // Nothing of somebody else is touched, and no record that was written on the stick itself is lost.
    private void CheckStick(StickPlan plan, IReadOnlyList<string> content)
    {
        var manifest = Path.Combine(_folder, StickLayout.Manifest);
        if (!File.Exists(manifest)) return; // then the writer wants an empty folder
        var named = FileList.Read(disk.Read(manifest));
        if (named.FirstOrDefault(n => !StickLayout.Holds(n.Key)) is { } lie)
            throw Refused($"{manifest} names {lie.Key}, which packing does not write", "Choose an empty folder.");
        var ours = content.ToDictionary(c => StickLayout.Content + c, c => Path.Combine(plan.Content, c), StringComparer.OrdinalIgnoreCase);
        foreach (var (path, isLink) in StickFolder.Files(_folder).Where(f => f.Path != StickLayout.Manifest && f.Path != StickLayout.Manifest + ".next" && !f.Path.StartsWith(SiteWriter.StagingName + "/", StringComparison.Ordinal)))
        {
            if (isLink) throw Refused($"{path} on the stick is a link", "Take it away, or choose an empty folder.");
            var isContent = path.StartsWith(StickLayout.Content, StringComparison.Ordinal);
            if (!isContent && named.Contains(path)) continue;
            var hash = StickVerifier.HashOf(Path.Combine(_folder, path));
            if (named.Contains(path) && (plan.Replaces || named[path].Contains(hash)) || hash is not null && ours.TryGetValue(path, out var same) && StickVerifier.HashOf(same) == hash) continue;
            if (!isContent) throw Refused($"{_folder} holds files that packing did not write, such as {path}", "Choose an empty folder, or take them away.");
            throw Refused(
                $"{path} was {(named.Contains(path) ? "changed" : "put")} on the stick after it was packed",
                $"It may hold a record that is nowhere else. Take it in first: crossref combine {folder}. Then {(named.Contains(path) ? "pack with --replace" : "take it off the stick and pack again")}. If it is damaged, delete it on the stick and pack again.");
        }
        CheckRecords(plan, isUnfinished: named.Any(n => n.Count() > 1) || Directory.Exists(Path.Combine(_folder, SiteWriter.StagingName)) || !File.Exists(Path.Combine(_folder, StickLayout.Start)));
    }

    private void CheckRecords(StickPlan plan, bool isUnfinished)
    {
        var content = Path.Combine(_folder, StickLayout.Content);
        if (plan.Replaces || !Directory.Exists(content)) return;
        var owner = ContentReader.Read(content).Library?.Card.Id;
        if (owner is not null && owner != plan.Library.Id)
            throw Refused($"The stick holds the library {owner}, not {plan.Library.Id}", $"Take its records in first: crossref combine {folder}. Then pack with --replace, or onto an empty folder.");
        // Another copy of this library may have packed it, and what is new there may have got no further than this stick.
        // Where packing was interrupted, old and new lie side by side and nobody can tell.
        if (!isUnfinished && Combiner.Plan(plan.Content, content, plan.Date).Decisions.FirstOrDefault(d => IsNews(d.Outcome)) is { } news)
            throw Refused($"The stick holds what this copy does not have yet, such as {Words.Of(news.Type)} {news.Name}", $"Take it in first: crossref combine {folder}. Then pack again.");
    }

    private static bool IsNews(CombineOutcome outcome) =>
        outcome is CombineOutcome.New or CombineOutcome.TheirsNewer or CombineOutcome.Merged or CombineOutcome.ToChoose or CombineOutcome.KeptAside;

    private static SiteFolderException Refused(string what, string hint) => new(what + ". Nothing was written.", hint);

    // On a disk that knows who may run what. A stick in FAT32 lets everything run, and has no such call.
    private void LetRun()
    {
        if (OperatingSystem.IsWindows()) return;
        foreach (var path in StickLayout.Tools.Select(t => StickLayout.Tool + t.Path).Concat(StickLayout.Updates.Select(u => u.Path)).Select(p => Path.Combine(_folder, p)).Where(File.Exists))
        {
            try
            {
                File.SetUnixFileMode(path, File.GetUnixFileMode(path) | UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
            }
        }
    }
}
