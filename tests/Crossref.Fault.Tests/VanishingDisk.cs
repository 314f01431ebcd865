using Crossref.Core.Storing;

namespace Crossref.Fault.Tests;

/// <summary>A disk from which one file vanishes just when it is read.</summary>
internal sealed class VanishingDisk(string ending) : IDisk
{
    private readonly Disk _disk = new();

    public bool HasFile(string path) => _disk.HasFile(path);

    public byte[] Read(string path)
    {
        if (path.EndsWith(ending, StringComparison.Ordinal)) File.Delete(path);
        return _disk.Read(path);
    }

    public void Write(string path, ReadOnlySpan<byte> content) => _disk.Write(path, content);

    public void Flush(string path) => _disk.Flush(path);

    public void Move(string source, string target) => _disk.Move(source, target);

    public void Delete(string path) => _disk.Delete(path);

    public void MakeFolder(string path) => _disk.MakeFolder(path);

    public void DeleteFolder(string path) => _disk.DeleteFolder(path);
}
