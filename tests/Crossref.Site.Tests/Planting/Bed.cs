using System.Text;
using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Tests.Planting;

/// <summary>
/// A sound library that writes every key there is, in a form in which single things can be changed. Read and checked
/// in memory, by the production code.
/// </summary>
internal sealed class Bed
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    /// <summary>Files that are written as they are.</summary>
    internal Dictionary<string, byte[]> Other { get; } = new(StringComparer.Ordinal);

    /// <summary>The full example, in which the first record of each type says that it is not retired.</summary>
    internal static Bed Full()
    {
        var bed = new Bed();
        var folder = Path.Combine(Repository.SiteTests, "Full");
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var path = Path.GetRelativePath(folder, file).Replace('\\', '/');
            if (path.StartsWith('.') || path.StartsWith("inbox/", StringComparison.Ordinal)) continue;
            if (path.EndsWith(".yaml", StringComparison.Ordinal)) bed.Add(path, File.ReadAllText(file));
            else if (path.EndsWith(".md", StringComparison.Ordinal)) bed.AddNote(path, File.ReadAllText(file));
            else bed.Other[path] = File.ReadAllBytes(file);
        }
        foreach (var document in bed.Documents.DistinctBy(d => d.Shape)) document.Root.Keys!.Add(new Entry("retired", new Item { Raw = "false" }));
        return bed;
    }

    /// <summary>Every document in the order it is read in; of a note, its front matter.</summary>
    internal List<BedDocument> Documents { get; } = [];

    /// <summary>Adds documents.</summary>
    internal IReadOnlyList<BedDocument> Add(string file, string yaml)
    {
        var log = new DiagnosticLog();
        var roots = YamlReader.Read(file, yaml, log).Select(d => d.Root).ToList();
        if (log.Found.Count > 0) throw new InvalidOperationException(DiagnosticText.Format(log.Found));
        List<BedDocument> added = [.. roots.OfType<MapNode>().Select(m => new BedDocument(file, Item.Of(m), RecordShapes.Find(m.Entries[0].Key)!))];
        Documents.AddRange(added);
        return added;
    }

    /// <summary>The document of that id.</summary>
    internal BedDocument Find(string id) => Documents.Single(d => d.Id == id);

    /// <summary>A value that leads to something in this library; null when the shape is no reference.</summary>
    internal string? Existing(ValueShape shape) =>
        shape.Kind != ValueKind.Reference ? null
            : shape.Target.HasFlag(Target.Position) ? "ostrin-f2/fold-head/roller-2-bearing-rear"
            : Documents.First(d => shape.Target.HasFlag(Targets.Of(d.Shape.Type!.Value))).Id;

    /// <summary>What the production code says of the whole, and where each file came out.</summary>
    internal IReadOnlyList<Diagnostic> Check()
    {
        var log = new DiagnosticLog();
        return ContentReader.Read(ContentFolder.Of(Write()), log).Check(Today);
    }

    /// <summary>The files, as they are now.</summary>
    internal IReadOnlyDictionary<string, byte[]> Write()
    {
        var files = new Dictionary<string, byte[]>(Other, StringComparer.Ordinal);
        foreach (var file in Documents.GroupBy(d => d.File))
        {
            var writer = new ItemWriter();
            foreach (var document in file)
            {
                if (document != file.First() || document.Body is not null) writer.Line("---");
                writer.Document(document.Root);
                if (document.Body is { } body) writer.Line("---\n" + body);
            }
            files[file.Key] = Encoding.UTF8.GetBytes(writer.Text);
        }
        return files;
    }

    /// <summary>Gives something another id, wherever it is named. What it returns takes that back.</summary>
    internal Action Rename(string old, string now)
    {
        var undo = new List<Action>();
        var word = new Regex($"(?<=^|[/:]){Regex.Escape(old)}(?=$|[/)])", RegexOptions.Multiline);
        foreach (var document in Documents)
        {
            foreach (var item in Singles(document.Root))
            {
                var raw = item.Raw!;
                item.Raw = word.Replace(raw, now);
                undo.Add(() => item.Raw = raw);
            }
            if (document.Body is not { } body) continue;
            document.Body = word.Replace(body, now);
            undo.Add(() => document.Body = body);
        }
        return () => undo.ForEach(u => u());
    }

    private static IEnumerable<Item> Singles(Item item) =>
        item.Raw is not null ? [item] : (item.Rows ?? item.Keys!.ConvertAll(e => e.Value)).SelectMany(Singles);

    private void AddNote(string path, string text)
    {
        var pieces = text.Split("---\n", 3);
        var front = (MapNode)YamlReader.Read(path, pieces[1], new DiagnosticLog()).Single().Root!;
        Documents.Add(new BedDocument(path, Item.Of(front), CatalogueShapes.NoteFront) { Body = pieces[2].TrimEnd('\n') });
    }
}

/// <summary>One document of a bed.</summary>
internal sealed class BedDocument(string file, Item root, MapShape shape)
{
    internal string File { get; } = file;
    internal Item Root { get; } = root;
    internal MapShape Shape { get; } = shape;

    /// <summary>A note's Markdown; null for a record.</summary>
    internal string? Body { get; set; }

    internal string Id { get; } = root.Keys![0].Value.Raw!;

    public override string ToString() => $"{Shape.Name} {Id}";
}
