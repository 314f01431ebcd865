using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;

namespace Crossref.Site.Recording;

/// <summary>
/// The folder <c>inbox</c> in a content folder: files that the record page saved, or that came by mail. A file is taken
/// in whole or not at all.
/// </summary>
public static class Inbox
{
    /// <summary>Its name below the content folder.</summary>
    public const string Name = "inbox";

    /// <summary>Whether there is anything to look at.</summary>
    public static bool HasFiles(string contentFolder)
    {
        try
        {
            return InboxFolder.Entries(contentFolder).Count > 0;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    /// <summary>Looks through the inbox and says what is to be done. Changes nothing.</summary>
    /// <param name="contentFolder">The folder.</param>
    /// <param name="today">The day against which dates are judged.</param>
    public static InboxPlan Look(string contentFolder, DateOnly today)
    {
        if (!HasFiles(contentFolder)) return InboxPlan.Nothing;
        var log = new DiagnosticLog();
        var folder = ContentFolder.Open(contentFolder, log);
        var before = ContentReader.Read(folder, log);
        // Without a library nobody knows whose findings these are; the error that says so is enough.
        if (before.Library is not { } library) return InboxPlan.Nothing;
        var files = new InboxFolder(folder, library).Read(contentFolder);
        var sound = files.Where(f => f.Problems.Count == 0 && !f.IsKnown).ToList();
        var found = files.SelectMany(f => f.Problems).ToList();
        sound = Tried(folder, sound, [.. before.Check(today)], today, found);
        return new InboxPlan(
            [.. sound.SelectMany(f => f.Records).Select(r => r.Id)],
            [.. Moves(RecordingDesk.NamesIn(folder), sound), .. files.Where(f => f.IsKnown).Select(f => f.Removal)],
            DiagnosticOrder.Sort(found));
    }

    // All at once; those that the checks complain of fall away, until they complain of none. A complaint about another
    // file (a bag that is empty now) is laid at the door of the last file, which then has to wait.
    private static List<InboxFile> Tried(ContentFolder folder, List<InboxFile> sound, HashSet<Diagnostic> before, DateOnly today, List<Diagnostic> found)
    {
        while (sound.Count > 0)
        {
            var with = ContentReader.Read(folder.With(sound.ToDictionary(f => f.Path, f => f.Bytes)), new DiagnosticLog());
            var errors = with.Check(today).Where(d => d.Severity == Severity.Error && !before.Contains(d)).ToList();
            if (errors.Count == 0) break;
            var own = errors.Where(e => sound.Any(f => f.Path == e.Place.File)).ToList();
            if (own.Count == 0) own = [errors[0] with { Message = $"{errors[0].Message} ({errors[0].Place})", Place = new Place(sound[^1].Path, 0, 0) }];
            found.AddRange(own.Select(InboxFolder.Mistake));
            sound = [.. sound.Where(f => own.All(e => e.Place.File != f.Path))];
        }
        return sound;
    }

    private static IEnumerable<FileChange> Moves(HashSet<string> names, IEnumerable<InboxFile> files) =>
        files.SelectMany(f => new[] { new FileChange(RecordingDesk.FreeFile(names, f.Records[0].Type, f.Records[0].Id), f.Bytes) { MustBeNew = true }, f.Removal });
}
