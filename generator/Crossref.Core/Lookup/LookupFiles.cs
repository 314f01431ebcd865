using System.Collections;

namespace Crossref.Core.Lookup;

/// <summary>The files of an index, the first script first. The same entries give the same files.</summary>
public sealed class LookupFiles : IReadOnlyList<LookupFile>
{
    private readonly IReadOnlyList<LookupFile> _files;
    private readonly Dictionary<string, string> _byPath;

    internal LookupFiles(IReadOnlyList<LookupFile> files)
    {
        _files = files;
        _byPath = files.ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);
    }

    /// <inheritdoc/>
    public int Count => _files.Count;

    /// <inheritdoc/>
    public LookupFile this[int index] => _files[index];

    /// <summary>The text of a file; what a <see cref="LookupReader"/> over an index in memory loads.</summary>
    /// <exception cref="KeyNotFoundException">There is no such file.</exception>
    public string Text(string path) => _byPath[path];

    /// <inheritdoc/>
    public IEnumerator<LookupFile> GetEnumerator() => _files.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
