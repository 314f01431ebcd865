using System.Runtime.InteropServices;

namespace Crossref.Core.Storing;

/// <summary>The real disk.</summary>
public sealed class Disk : IDisk
{
    private const int Tries = 20;

    /// <inheritdoc/>
    public bool HasFile(string path) => File.Exists(path);

    /// <inheritdoc/>
    public byte[] Read(string path) => File.ReadAllBytes(path);

    /// <inheritdoc/>
    public void Write(string path, ReadOnlySpan<byte> content)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        file.Write(content);
    }

    /// <inheritdoc/>
    public void Flush(string path)
    {
        if (Directory.Exists(path))
        {
            FlushFolder(path);
            return;
        }
        using var file = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.Read);
        file.Flush(flushToDisk: true);
    }

    /// <inheritdoc/>
    public void Move(string source, string target) => Patiently(() => File.Move(source, target, overwrite: true));

    /// <inheritdoc/>
    public void Delete(string path) => Patiently(() =>
    {
        if (File.Exists(path)) File.Delete(path);
    });

    /// <inheritdoc/>
    public void MakeFolder(string path) => Directory.CreateDirectory(path);

    /// <inheritdoc/>
    public void DeleteFolder(string path) => Patiently(() =>
    {
        if (Directory.Exists(path)) Directory.Delete(path, recursive: true);
    });

    // On Windows a virus scanner or an indexer may hold a file for a moment after it was written.
    private static void Patiently(Action action)
    {
        for (var left = Tries; ; left--)
        {
            try
            {
                action();
                return;
            }
            catch (Exception e) when (OperatingSystem.IsWindows() && left > 0 && (e is UnauthorizedAccessException || e is IOException held && FolderLock.IsHeld(held)))
            {
                Thread.Sleep(100);
            }
        }
    }

    // A new name is only kept when its folder is on the disk too. Windows does that by itself and has no call for it.
    private static void FlushFolder(string path)
    {
        if (OperatingSystem.IsWindows()) return;
        var handle = Open(path, 0);
        if (handle < 0) return;
        _ = FSync(handle);
        _ = Close(handle);
    }

    [DllImport("libc", EntryPoint = "open")]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "fsync")]
    private static extern int FSync(int handle);

    [DllImport("libc", EntryPoint = "close")]
    private static extern int Close(int handle);
}
