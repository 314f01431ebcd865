using System.Security.Cryptography;
using Crossref.Site.Writing;

namespace Crossref.Site.Sharing;

/// <summary>Compares a stick with its manifest. This finds accidents; whoever owns the stick can change the manifest too.</summary>
public static class StickVerifier
{
    // A hundred characters a line: half a million files.
    private const long LongestManifest = 50_000_000;

    /// <summary>Reads every file of a stick.</summary>
    /// <exception cref="SiteFolderException">There is no stick here, or it cannot be read.</exception>
    public static StickVerification Verify(string folder)
    {
        var manifest = new FileInfo(Path.Combine(folder, StickLayout.Manifest));
        if (!Directory.Exists(folder)) throw new SiteFolderException($"There is no folder {Path.GetFullPath(folder)}.", "Name the stick's folder, such as E:\\ or /media/stick.");
        if (!manifest.Exists) throw new SiteFolderException($"{Path.GetFullPath(folder)} has no {StickLayout.Manifest}: no stick was packed here, or packing stopped at its very beginning.", "Name the stick's top folder, or pack it: crossref pack DIR");
        if (manifest.LinkTarget is not null || manifest.Length > LongestManifest) throw new SiteFolderException($"{manifest.FullName} is none that packing writes.", "Do not trust this stick.");
        try
        {
            return Compare(folder, FileList.Read(File.ReadAllBytes(manifest.FullName)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SiteFolderException($"{Path.GetFullPath(folder)} could not be read: {e.Message}", "Check that the stick is in, and run the command again.", e);
        }
    }

    private static StickVerification Compare(string folder, ILookup<string, string> named)
    {
        var there = StickFolder.Files(folder).Where(f => f.Path != StickLayout.Manifest).ToList();
        var files = there.Where(f => !f.IsLink).Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        return new StickVerification(
            named.Count,
            [.. named.Select(n => n.Key).Where(path => !files.Contains(path)).Order(StringComparer.Ordinal)],
            [.. named.Where(n => files.Contains(n.Key) && HashOf(Path.Combine(folder, n.Key)) is var hash && n.Any(h => h != hash)).Select(n => n.Key).Order(StringComparer.Ordinal)],
            [.. there.Where(f => f.IsLink || !named.Contains(f.Path)).Select(f => f.Path)],
            named.Any(n => n.Count() > 1) || Directory.Exists(Path.Combine(folder, SiteWriter.StagingName)) || !files.Contains(StickLayout.Start));
    }

    /// <summary>The hash of a file, read piece by piece; null when it cannot be read.</summary>
    internal static string? HashOf(string file)
    {
        try
        {
            using var stream = File.OpenRead(file);
            return Convert.ToHexStringLower(SHA256.HashData(stream));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
