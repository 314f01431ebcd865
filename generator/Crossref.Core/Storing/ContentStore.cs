using System.Security.Cryptography;
using System.Text;

namespace Crossref.Core.Storing;

/// <summary>
/// A content folder that is being changed. Only one program has it at a time. Changes are made all or not at all,
/// also when the power goes: what was begun is finished, or forgotten, by whoever opens the folder next.
/// </summary>
public sealed class ContentStore : IDisposable
{
    /// <summary>The folder in which the tool keeps what is its own; no record is read from it.</summary>
    public const string OwnFolder = ".crossref";

    private readonly IDisk _disk;
    private readonly string _root;
    private readonly FolderLock _lock;

    private ContentStore(string root, IDisk disk, FolderLock held) => (_root, _disk, _lock) = (root, disk, held);

    /// <summary>Takes a folder and sets right what an interrupted change left.</summary>
    /// <exception cref="StoreException">Another program has it, or it cannot be written.</exception>
    public static ContentStore Open(string folder, IDisk disk)
    {
        var root = Path.GetFullPath(folder);
        try
        {
            disk.MakeFolder(Path.Combine(root, OwnFolder));
            var store = new ContentStore(root, disk, FolderLock.Take(Path.Combine(root, OwnFolder, "lock")));
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
        catch (Exception e) when (e is IOException or UnauthorizedAccessException && e is not StoreException)
        {
            throw Failed(root, e);
        }
    }

    /// <summary>Makes changes, all or none.</summary>
    /// <exception cref="StoreException">A file that must be new is there, or the disk refused; nothing was changed, or the next run finishes it.</exception>
    public void Apply(IReadOnlyList<FileChange> changes)
    {
        if (changes.Count == 0) return;
        try
        {
            foreach (var change in changes.Where(c => c.MustBeNew && _disk.HasFile(FullPath(c.Path))))
                throw new StoreException($"{change.Path} is there already.", "Nothing was changed. Run the command again; it takes another name.");
            _disk.DeleteFolder(Staging);
            _disk.MakeFolder(Staging);
            var lines = new StringBuilder();
            for (var i = 0; i < changes.Count; i++)
            {
                if (changes[i].Content is { } content) _disk.WriteThrough(Staged(i), content);
                lines.Append(changes[i].Content is { } bytes ? Convert.ToHexStringLower(SHA256.HashData(bytes)) : Nothing).Append("  ").Append(changes[i].Path).Append('\n');
            }
            // From here on the change is decided: whatever happens, it is finished.
            _disk.WriteThrough(Journal + ".next", Encoding.UTF8.GetBytes(lines.ToString()));
            _disk.Move(Journal + ".next", Journal);
            Finish();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException && e is not StoreException)
        {
            throw Failed(_root, e);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _lock.Dispose();

    private const string Nothing = "-";

    private string Own(string name) => Path.Combine(_root, OwnFolder, name);

    private string Journal => Own("journal");

    private string Staging => Own("next");

    private string Staged(int number) => Path.Combine(Staging, FormattableString.Invariant($"{number}"));

    private string FullPath(string path) => Path.Combine(_root, path.Replace('/', Path.DirectorySeparatorChar));

    // Rolls a decided change forward; forgets one that was not decided. Either can be done any number of times.
    private void Finish()
    {
        _disk.Delete(Journal + ".next");
        if (_disk.HasFile(Journal))
        {
            var lines = Encoding.UTF8.GetString(_disk.Read(Journal)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            for (var i = 0; i < lines.Length; i++)
            {
                var (hash, target) = (lines[i][..lines[i].IndexOf("  ", StringComparison.Ordinal)], FullPath(lines[i][(lines[i].IndexOf("  ", StringComparison.Ordinal) + 2)..]));
                if (hash == Nothing) _disk.Delete(target);
                else if (_disk.HasFile(Staged(i)))
                {
                    _disk.MakeFolder(Path.GetDirectoryName(target)!);
                    _disk.Move(Staged(i), target);
                }
            }
            _disk.Delete(Journal);
        }
        _disk.DeleteFolder(Staging);
    }

    private static StoreException Failed(string root, Exception e) => new(
        $"{root} could not be changed: {e.Message}", "Check that the disk or stick is in, has room, and that you may write to it. What was there is still there.", e);
}
