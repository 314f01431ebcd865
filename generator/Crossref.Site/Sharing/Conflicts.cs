using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Site.Sharing;

/// <summary>The records of a content folder of which copies differ.</summary>
public static class Conflicts
{
    /// <summary>Every open conflict, by the name of its file.</summary>
    /// <param name="contentFolder">The folder.</param>
    public static IReadOnlyList<Conflict> Read(string contentFolder)
    {
        var log = new DiagnosticLog();
        return [.. Read(ContentFolder.Open(contentFolder, log), log)];
    }

    /// <summary>Warns of every open conflict.</summary>
    internal static void Check(ContentFolder folder, DiagnosticLog log)
    {
        foreach (var conflict in Read(folder, log))
        {
            var keys = string.Join(", ", conflict.Keys.Select(k => CombineGroups.Name(k.Key)));
            log.Add(SharingCodes.OpenConflict, new Place(conflict.File, 0, 0), $"copies of {Words.Of(conflict.Type)} '{conflict.Name}' differ: {keys}",
                "crossref choose shows the texts and puts the one that is right in force");
        }
    }

    private static IEnumerable<Conflict> Read(ContentFolder folder, DiagnosticLog log)
    {
        foreach (var path in folder.Files.Keys.Where(f => f.StartsWith(ConflictFile.Folder, StringComparison.Ordinal) && f.EndsWith(".txt", StringComparison.Ordinal)))
        {
            if (TextFile.Read(folder, path, log, out _) is { } text && ConflictFile.Read(path, text) is { } conflict) yield return conflict;
        }
    }
}
