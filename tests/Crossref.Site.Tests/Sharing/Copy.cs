using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Tests.Sharing;

/// <summary>A copy of a content folder that is edited and combined with others.</summary>
internal sealed class Copy : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    internal string Folder => Path.Combine(_folder.Path, "content");

    /// <summary>The folder above the content folder, where nothing must be touched.</summary>
    internal string Outside => _folder.Path;

    internal static DateOnly Day { get; } = new(2026, 2, 11);

    internal Copy With(string path, string text)
    {
        _folder.Write("content/" + path, text);
        return this;
    }

    internal Copy With(string path, byte[] bytes)
    {
        _folder.Write("content/" + path, bytes);
        return this;
    }

    internal static Copy Of(string library) => new Copy().With("library.yaml", $"library: {library}\ntitle: The {library}\n");

    /// <summary>Another folder with the same files, history included.</summary>
    internal Copy Again()
    {
        var copy = new Copy();
        copy._folder.Lay(_folder.Path, (_, bytes) => bytes);
        return copy;
    }

    internal Copy Note() => Apply(History.Note(Folder, Day));

    internal Copy Apply(IReadOnlyList<FileChange> changes)
    {
        using var store = ContentStore.Open(Folder, new Disk());
        store.Apply(changes);
        return this;
    }

    internal CombinePlan Plan(Copy other) => Combiner.Plan(Folder, other.Folder, Day);

    /// <summary>Takes another copy in.</summary>
    internal CombinePlan Combine(Copy other)
    {
        var plan = Plan(other);
        Assert.False(plan.IsRefused, string.Join('\n', plan.Diagnostics));
        Apply(plan.Changes);
        return plan;
    }

    internal string this[string path] => File.ReadAllText(Path.Combine(Folder, path));

    internal bool Has(string path) => File.Exists(Path.Combine(Folder, path));

    internal Copy Edit(string path, Func<string, string> change) => With(path, change(this[path]));

    internal Copy Delete(string path)
    {
        File.Delete(Path.Combine(Folder, path));
        return this;
    }

    /// <summary>The text of every record by the name that copies know it by.</summary>
    internal IReadOnlyDictionary<string, string> Records()
    {
        var log = new DiagnosticLog();
        var texts = FolderTexts.Read(Folder, log);
        Assert.Empty(log.Found);
        return texts.Records.ToDictionary(r => r.Key, r => r.Value.Text, StringComparer.Ordinal);
    }

    /// <summary>What is left to be chosen: record, key and the set of texts.</summary>
    internal IReadOnlyList<string> Open() =>
        [.. Conflicts.Read(Folder).SelectMany(c => c.Keys.Select(k => $"{c.Name} {k.Key}: {string.Join(" | ", k.Choices.Select(v => v.Text ?? "-").Order(StringComparer.Ordinal))}")).Order(StringComparer.Ordinal)];

    public void Dispose() => _folder.Dispose();
}
