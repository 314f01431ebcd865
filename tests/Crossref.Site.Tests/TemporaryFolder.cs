namespace Crossref.Site.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("crossref-").FullName;

    /// <summary>Writes a file, with the folders it needs.</summary>
    internal void Write(string path, byte[] bytes)
    {
        var full = System.IO.Path.Combine(Path, path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
    }

    internal void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>Lays all files of a folder over this one.</summary>
    internal void Lay(string folder, Func<string, byte[], byte[]> change)
    {
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var path = System.IO.Path.GetRelativePath(folder, file);
            Write(path, change(path, File.ReadAllBytes(file)));
        }
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
