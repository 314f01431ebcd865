using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Histories;

/// <summary>What became of every record of a folder, by the name that every copy knows it by.</summary>
internal sealed class HistoryBook
{
    internal SortedDictionary<string, RecordHistory> Records { get; } = new(StringComparer.Ordinal);

    /// <summary>Hashes of texts that were once kept aside to be chosen, so that what was declined is not brought up again.</summary>
    internal SortedSet<string> Aside { get; } = new(StringComparer.Ordinal);

    /// <summary>Takes in how the records of the folder stand now. A record that is gone keeps its history.</summary>
    /// <param name="texts">The folder.</param>
    /// <param name="library">Whose folder it is.</param>
    /// <param name="today">The day of what is new.</param>
    internal void Note(FolderTexts texts, string library, DateOnly today)
    {
        var date = FormattableString.Invariant($"{today:yyyy-MM-dd}");
        foreach (var (name, record) in texts.Records)
        {
            // What was a note and is a record now, or the other way round, begins anew.
            if (!Records.TryGetValue(name, out var before) || before.Type != record.Type) Records[name] = RecordHistory.Begin(record.Type, record.Text, library, date);
            else Records[name] = before.Note(record.Text, library, date, settles: before.Conflicts.Count > 0 && !texts.Folder.Files.ContainsKey(ConflictFile.PathOf(record.Type, name)));
        }
    }
}
