using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Sharing.Histories;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing;

/// <summary>Ends what combining left open: puts the text that somebody chose in force. Nothing is written before its changes are applied.</summary>
public sealed class Chooser
{
    private readonly string _contentFolder;
    private readonly FolderTexts _texts;
    private readonly HistoryBook _book;
    private readonly string _date;
    private readonly Layout _layout;
    private readonly SortedDictionary<string, Conflict> _aside = new(StringComparer.Ordinal);
    private readonly List<FileChange> _gone = [];

    private Chooser(string contentFolder, FolderTexts texts, HistoryBook book, DateOnly today, IReadOnlyList<Diagnostic> diagnostics)
    {
        (_contentFolder, _texts, _book, Diagnostics) = (contentFolder, texts, book, diagnostics);
        (_date, _layout) = (FormattableString.Invariant($"{today:yyyy-MM-dd}"), new Layout(texts));
        if (IsRefused) return;
        book.Note(texts, texts.Library!, today);
        var merged = Merged().Select(c => c.File).ToHashSet(StringComparer.Ordinal);
        foreach (var conflict in Conflicts.Read(contentFolder).Where(c => !merged.Contains(c.File) && c.Keys.Count > 0)) _aside[conflict.File] = conflict;
    }

    /// <summary>What is wrong with the folder.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; }

    /// <summary>Whether nothing can be chosen before that is mended.</summary>
    public bool IsRefused => Diagnostics.Any(d => d.Severity == Severity.Error);

    /// <summary>What is open now.</summary>
    public IReadOnlyList<Conflict> Open => [.. Merged().Concat(_aside.Values).OrderBy(c => c.File, StringComparer.Ordinal)];

    /// <summary>Everything to be written, together or not at all.</summary>
    public IReadOnlyList<FileChange> Changes =>
        [.. _layout.Changes(), .. _gone, .. History.Changes(_contentFolder, _texts, _book, _texts.Records.ToDictionary(r => r.Key, r => r.Value.Type, StringComparer.Ordinal)).Where(c => _gone.All(g => g.Path != c.Path))];

    /// <summary>Reads a folder.</summary>
    /// <param name="contentFolder">The folder.</param>
    /// <param name="today">The day on which it is chosen.</param>
    public static Chooser Read(string contentFolder, DateOnly today)
    {
        var log = new DiagnosticLog();
        var texts = FolderTexts.Read(contentFolder, log);
        if (texts.Library is null && log.Found.All(d => d.Severity != Severity.Error))
            log.Add(CombiningCodes.NoOwner, new Place(".", 0, 0), "no document says whose library this is", "add a file library.yaml with library: and title:");
        return new Chooser(contentFolder, texts, History.Load(contentFolder, texts, log), today, DiagnosticOrder.Sort(log.Found));
    }

    /// <summary>Chooses.</summary>
    /// <param name="conflict">One of <see cref="Open"/>.</param>
    /// <param name="key">One of its keys.</param>
    /// <param name="number">Which of the key's texts, from 1.</param>
    /// <returns>What is wrong with that text; null when it is in force now.</returns>
    public string? Choose(Conflict conflict, ConflictKey key, int number)
    {
        ArgumentNullException.ThrowIfNull(conflict);
        ArgumentNullException.ThrowIfNull(key);
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, key.Choices.Count);
        if (_aside.ContainsKey(conflict.File))
        {
            if (key.Choices[number - 1].Text is not null) return "it was kept aside because it cannot be taken as it is. If it is right, write it into a file of records under an id that is free, then choose the other";
            _aside.Remove(conflict.File);
            _gone.Add(new FileChange(conflict.File, null));
            return null;
        }
        var (record, history) = (_texts.Records[conflict.Name], _book.Records[conflict.Name]);
        var (open, at) = history.Conflicts.Where(o => Keys.Shown(o.Key) == key.Key).SelectMany(o => o.Choices.Select((_, i) => (o, i))).ElementAt(number - 1);
        var chosen = history.Choose(open, at, _texts.Library!, _date);
        var log = new DiagnosticLog();
        if (RecordReading.Read(record.Type, record.Id, chosen.Text, log) is not { } found || found != (record.Type, record.Id) || log.Found.Count > 0)
            return log.Found.Count > 0 ? $"with it the record would not be a sound one: {log.Found[0].Message}" : "with it the record would be another one";
        _book.Records[conflict.Name] = chosen;
        if (RecordText.Plain(chosen.Text) != RecordText.Plain(history.Text)) _layout.Replace(record, chosen.Text);
        return null;
    }

    private IEnumerable<Conflict> Merged() =>
        from record in _texts.Records
        let open = _book.Records[record.Key].Conflicts
        where open.Count > 0
        select new Conflict(record.Value.Type, record.Key, ConflictFile.PathOf(record.Value.Type, record.Key), History.Shown(open));
}
