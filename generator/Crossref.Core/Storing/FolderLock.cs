namespace Crossref.Core.Storing;

/// <summary>
/// Keeps a folder for one program at a time. The system gives the lock back when the program ends, however it ends, so
/// a killed one locks nobody out. The file stays: taking it away would let a third program in beside a second one.
/// </summary>
public sealed class FolderLock : IDisposable
{
    // Most changes are over in a moment.
    private const int Tries = 10;

    private readonly FileStream _held;

    private FolderLock(FileStream held) => _held = held;

    /// <summary>Takes the lock.</summary>
    /// <param name="path">A file that is there for nothing else; it is made where it is missing.</param>
    /// <exception cref="StoreException">Another program has it.</exception>
    public static FolderLock Take(string path)
    {
        for (var left = Tries; ; left--)
        {
            try
            {
                return new FolderLock(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1));
            }
            catch (IOException e) when (IsHeld(e))
            {
                if (left == 0) throw new StoreException("Another Crossref is at work in this folder.", "Wait until it is done, and run the command again. Nothing was changed.", e);
                Thread.Sleep(100);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _held.Dispose();

    // Sharing and lock violation on Windows; EWOULDBLOCK on Linux and macOS.
    internal static bool IsHeld(IOException e) =>
        OperatingSystem.IsWindows() ? (e.HResult & 0xFFFF) is 32 or 33 : e.HResult is 11 or 35;
}
