namespace Crossref.Core.Storing;

/// <summary>Where changes may go. Whatever would stop a change half way is found here, before anything is begun.</summary>
internal sealed class StorePaths(string root, IReadOnlySet<string> reserved)
{
    /// <summary>The path on this system.</summary>
    internal string Full(string path) => Path.Combine(root, path.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>Whether a path leads to a place below the folder that is nobody else's.</summary>
    internal bool IsInside(string path) =>
        path.Split('/').All(name => name.Length > 0 && name is not ("." or "..")) && !path.Contains('\0')
        && Path.GetFullPath(Full(path)).StartsWith(root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar, StringComparison.Ordinal)
        && !reserved.Any(r => path.Equals(r, StringComparison.OrdinalIgnoreCase) || path.StartsWith(r + "/", StringComparison.OrdinalIgnoreCase));

    /// <summary>The folders that lead to a path, from the top.</summary>
    internal IEnumerable<string> Above(string path)
    {
        yield return root;
        for (var i = path.IndexOf('/', StringComparison.Ordinal); i > 0; i = path.IndexOf('/', i + 1)) yield return Full(path[..i]);
    }

    /// <exception cref="StoreException">The changes cannot be made as a whole.</exception>
    internal void Check(IReadOnlyList<FileChange> changes)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var change in changes)
        {
            if (!IsInside(change.Path)) throw Refused(change.Path, "it leads out of the content folder");
            if (!seen.Add(change.Path)) throw Refused(change.Path, "it is to be written twice at once");
            if (change.Content is not null && PortableName.Trouble(change.Path) is { } trouble) throw Refused(change.Path, trouble);
            CheckPlace(change);
        }
    }

    // Goes down the path through what is there. A stick knows no difference between A and a, and a link leads elsewhere.
    private void CheckPlace(FileChange change)
    {
        var (folder, names) = (root, change.Path.Split('/'));
        for (var i = 0; i < names.Length; i++)
        {
            var last = i == names.Length - 1;
            var there = new DirectoryInfo(folder).EnumerateFileSystemInfos().Where(e => e.Name.Equals(names[i], StringComparison.OrdinalIgnoreCase)).ToList();
            if (there.Find(e => e.Name == names[i]) is not { } entry)
            {
                if (there.Count > 0 && change.Content is not null) throw Refused(change.Path, $"{there[0].Name} is there already, written otherwise");
                return;
            }
            if (last && change.MustBeNew) throw new StoreException($"{change.Path} is there already.", "Nothing was changed. Run the command again; it takes another name.");
            if (!last && entry.LinkTarget is not null) throw Refused(change.Path, $"{entry.Name} is a link to somewhere else");
            if (entry is DirectoryInfo == last) throw Refused(change.Path, last ? "a folder of that name is there" : $"{entry.Name} is a file, not a folder");
            folder = entry.FullName;
        }
    }

    private static StoreException Refused(string path, string why) => new(
        $"{path} cannot be kept: {why}.", "Nothing was changed. Give the file another name, and run the command again.");
}
