namespace Crossref.Core.Storing;

/// <summary>
/// A content folder that is being changed. Only one program has it at a time. Changes are made all or not at all,
/// also when the power goes: what was begun is finished, or forgotten, by whoever opens the folder next.
/// Open it before you read what you are going to change.
/// </summary>
public sealed class ContentStore : IDisposable
{
    /// <summary>The folder in which the tool keeps what is its own; no record is read from it.</summary>
    public const string OwnFolder = ".crossref";

    /// <summary>The file that the program at work holds.</summary>
    public const string LockPath = OwnFolder + "/lock";
    private const string JournalPath = OwnFolder + "/journal";
    private const string NextJournalPath = OwnFolder + "/journal.next";
    private const string StagingPath = OwnFolder + "/next";

    private readonly IDisk _disk;
    private readonly string _root;
    private readonly StorePaths _paths;
    private readonly FolderLock _lock;

    private ContentStore(string root, IDisk disk, StorePaths paths, FolderLock held) => (_root, _disk, _paths, _lock) = (root, disk, paths, held);

    /// <summary>What in a content folder serves a change under way and nothing else: paths with forward slashes.</summary>
    public static IReadOnlySet<string> Passing { get; } = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { LockPath, JournalPath, NextJournalPath, StagingPath };

    /// <summary>Takes a folder and sets right what an interrupted change left.</summary>
    /// <exception cref="StoreException">Another program has it, or it cannot be written.</exception>
    public static ContentStore Open(string folder, IDisk disk)
    {
        var root = Path.GetFullPath(folder);
        var paths = new StorePaths(root, Passing);
        if (!Directory.Exists(root)) throw new StoreException($"There is no folder {root}.", "Go to the folder that holds your content folder, or name it: --content DIR.");
        try
        {
            if (new DirectoryInfo(paths.Full(OwnFolder)).LinkTarget is not null)
                throw new StoreException($"{OwnFolder} in {root} is a link to somewhere else.", "Take the link away, and run the command again. Nothing was changed.");
            disk.MakeFolder(paths.Full(OwnFolder));
            var store = new ContentStore(root, disk, paths, FolderLock.Take(paths.Full(LockPath)));
            try
            {
                store.Finish();
                return store;
            }
            catch
            {
                store.Dispose();
                throw;
            }
        }
        catch (Exception e) when (IsOfDisk(e))
        {
            throw new StoreException($"{root} could not be changed: {e.Message}", "Check that the disk or stick is in, has room, and that you may write to it. What was there is still there.", e);
        }
    }

    /// <summary>Sets right what an interrupted change left, if one did: to be called before a folder is read.</summary>
    /// <exception cref="StoreException">There is such a change, and it cannot be finished now.</exception>
    public static void FinishInterrupted(string folder, IDisk disk)
    {
        if (disk.HasFile(new StorePaths(Path.GetFullPath(folder), Passing).Full(JournalPath))) Open(folder, disk).Dispose();
    }

    /// <summary>Makes changes, all or none.</summary>
    /// <exception cref="StoreException">A file that must be new is there, a path cannot be kept, or the disk refused; nothing was changed, or the next run finishes it.</exception>
    public void Apply(IReadOnlyList<FileChange> changes)
    {
        if (changes.Count == 0) return;
        var decided = false;
        try
        {
            // An earlier change that the disk stopped half way comes first: its staged files would be lost otherwise.
            Finish();
            _paths.Check(changes);
            _disk.MakeFolder(_paths.Full(StagingPath));
            for (var i = 0; i < changes.Count; i++)
                if (changes[i].Content is { } content) _disk.WriteThrough(Staged(i), content);
            _disk.Flush(_paths.Full(StagingPath));
            _disk.WriteThrough(_paths.Full(NextJournalPath), StoreJournal.Format(changes));
            // From here on the change is decided: whatever happens, it is finished.
            decided = true;
            _disk.Move(_paths.Full(NextJournalPath), _paths.Full(JournalPath));
            _disk.Flush(_paths.Full(OwnFolder));
            Finish();
        }
        catch (Exception e) when (IsOfDisk(e))
        {
            if (!decided) Forget();
            throw new StoreException(
                $"{_root} could not be changed: {e.Message}",
                "Check that the disk or stick is in, has room, and that you may write to it, and run the command again. "
                + (decided ? "Nothing is lost: the change is noted beside the records, and the next run finishes it." : "Nothing was changed."),
                e);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _lock.Dispose();

    private static bool IsOfDisk(Exception e) => e is IOException or UnauthorizedAccessException && e is not StoreException;

    private string Staged(int number) => Path.Combine(_paths.Full(StagingPath), FormattableString.Invariant($"{number}"));

    // Makes room again on a disk that is full. Where even that fails, the next run does it.
    private void Forget()
    {
        try
        {
            _disk.Delete(_paths.Full(NextJournalPath));
            _disk.DeleteFolder(_paths.Full(StagingPath));
        }
        catch (Exception e) when (IsOfDisk(e))
        {
        }
    }

    // Rolls a decided change forward; forgets one that was not decided. Either can be done any number of times.
    private void Finish()
    {
        _disk.Delete(_paths.Full(NextJournalPath));
        if (_disk.HasFile(_paths.Full(JournalPath)))
        {
            var steps = StepsOf(_disk.Read(_paths.Full(JournalPath)));
            for (var i = 0; i < steps.Count; i++)
            {
                var target = _paths.Full(steps[i].Path);
                if (steps[i].Hash is null) _disk.Delete(target);
                else if (_disk.HasFile(Staged(i)))
                {
                    _disk.MakeFolder(Path.GetDirectoryName(target)!);
                    _disk.Move(Staged(i), target);
                }
            }
            // The journal may go only when the disk has the new names.
            foreach (var folder in steps.SelectMany(s => _paths.Above(s.Path)).Distinct(StringComparer.Ordinal).Where(Directory.Exists)) _disk.Flush(folder);
            _disk.Delete(_paths.Full(JournalPath));
        }
        _disk.DeleteFolder(_paths.Full(StagingPath));
    }

    // A stick can be damaged, and a folder can come from anybody: nothing is deleted before every new file is accounted for.
    private IReadOnlyList<(string Path, string? Hash)> StepsOf(byte[] journal)
    {
        if (StoreJournal.Read(journal) is not { } steps) throw Damaged("its list of files is damaged");
        for (var i = 0; i < steps.Count; i++)
        {
            var (path, hash) = steps[i];
            if (!_paths.IsInside(path)) throw Damaged($"it leads out of the folder, to {path}");
            if (_paths.Above(path).Any(f => f != _root && new DirectoryInfo(f).LinkTarget is not null)) throw Damaged($"a link leads elsewhere on the way to {path}");
            if (hash is null) continue;
            if (_disk.HasFile(Staged(i)) ? StoreJournal.Hash(_disk.Read(Staged(i))) != hash : !_disk.HasFile(_paths.Full(path))) throw Damaged($"{path} is damaged or missing");
        }
        return steps;
    }

    private StoreException Damaged(string what) => new(
        $"A change of {_root} was interrupted and cannot be finished: {what}.",
        $"Keep a copy of the folder {OwnFolder} in it; what was to be written lies in its folder next. Then delete next and journal there, look whether your last entries are in, and run the command again.");
}
