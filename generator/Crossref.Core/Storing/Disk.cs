namespace Crossref.Core.Storing;

/// <summary>The real disk.</summary>
public sealed class Disk : IDisk
{
    /// <inheritdoc/>
    public bool HasFile(string path) => File.Exists(path);

    /// <inheritdoc/>
    public byte[] Read(string path) => File.ReadAllBytes(path);

    /// <inheritdoc/>
    public void WriteNew(string path, ReadOnlySpan<byte> content)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    /// <inheritdoc/>
    public void Move(string source, string target) => File.Move(source, target, overwrite: true);

    /// <inheritdoc/>
    public void Delete(string path) => File.Delete(path);

    /// <inheritdoc/>
    public void MakeFolder(string path) => Directory.CreateDirectory(path);

    /// <inheritdoc/>
    public void DeleteFolder(string path)
    {
        if (Directory.Exists(path)) Directory.Delete(path, recursive: true);
    }
}
