using Crossref.Core.Checking;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;

namespace Crossref.Site.Sharing;

/// <summary>What would be wrong with a folder once changes are made. Each record may be sound by itself, and together they may not be.</summary>
public static class Aftermath
{
    /// <summary>Every error in the folder as it would be then.</summary>
    /// <param name="contentFolder">The folder as it stands.</param>
    /// <param name="changes">What is going to be written; what they take away holds no records.</param>
    /// <param name="today">The day against which dates are judged.</param>
    public static IReadOnlyList<Diagnostic> Of(string contentFolder, IEnumerable<FileChange> changes, DateOnly today)
    {
        var log = new DiagnosticLog();
        var files = changes.Where(c => c.Content is not null && !c.Path.StartsWith('.')).ToDictionary(c => c.Path, c => c.Content!, StringComparer.Ordinal);
        return [.. ContentReader.Read(ContentFolder.Open(contentFolder, log).With(files), log).Check(today).Where(d => d.Severity == Severity.Error)];
    }
}
