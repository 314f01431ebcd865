using Crossref.Core.Storing;

namespace Crossref.Tests.Faults;

/// <summary>A disk that works until a given moment. Every write, flush, rename, delete and new folder counts as one.</summary>
/// <param name="moment">Which of them fails, from 1 on; 0 for none.</param>
/// <param name="fault">How it fails.</param>
public sealed class FailingDisk(int moment, DiskFault fault) : IDisk
{
    private readonly Disk _disk = new();

    /// <summary>How many things were asked of the disk.</summary>
    public int Count { get; private set; }

    public bool HasFile(string path) => _disk.HasFile(path);

    public byte[] Read(string path) => _disk.Read(path);

    public void Write(string path, ReadOnlySpan<byte> content)
    {
        var whole = content.ToArray();
        Do(() => _disk.Write(path, whole), half: () => _disk.Write(path, whole.AsSpan(0, whole.Length / 2)));
    }

    // A killed program loses nothing that the system holds; waiting for the real disk would only make tests slow.
    public void Flush(string path) => Do(() => { });

    public void Move(string source, string target) => Do(() => _disk.Move(source, target));

    public void Delete(string path) => Do(() => _disk.Delete(path));

    public void MakeFolder(string path) => Do(() => _disk.MakeFolder(path));

    public void DeleteFolder(string path) => Do(() => _disk.DeleteFolder(path), half: () => DeleteHalf(path));

    private void Do(Action action, Action? half = null)
    {
        Count++;
        if (moment == 0 || Count < moment || Count > moment && fault == DiskFault.Refused)
        {
            action();
            return;
        }
        if (Count == moment && fault == DiskFault.DoneButFailed) action();
        if (Count == moment && fault == DiskFault.Torn) half?.Invoke();
        throw new IOException("No space left on device");
    }

    private static void DeleteHalf(string path)
    {
        if (!Directory.Exists(path)) return;
        var files = Directory.GetFiles(path, "*", SearchOption.AllDirectories);
        foreach (var file in files.Take((files.Length + 1) / 2)) File.Delete(file);
    }
}
