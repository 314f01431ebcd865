using System.Text;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>Reads the files of an inbox, each on its own and against what is on record.</summary>
internal sealed class InboxFolder(ContentFolder content, Library library)
{
    private static readonly RecordType[] Takes = [RecordType.Claim, RecordType.Repair, RecordType.Question];
    // What Windows lays into folders by itself.
    private static readonly string[] Foreign = ["desktop.ini", "thumbs.db"];

    private readonly Dictionary<string, string> _taken = new(StringComparer.Ordinal);

    /// <summary>What lies in the inbox, in order of name.</summary>
    internal static IReadOnlyList<FileSystemInfo> Entries(string contentFolder) =>
    [
        // A link would have files of another place taken in, and deleted there.
        .. new DirectoryInfo(contentFolder).EnumerateDirectories().Where(d => d.Name.Equals(Inbox.Name, StringComparison.OrdinalIgnoreCase) && d.LinkTarget is null)
            .SelectMany(d => d.EnumerateFileSystemInfos())
            .Where(e => !e.Name.StartsWith('.') && !Foreign.Contains(e.Name, StringComparer.OrdinalIgnoreCase)).OrderBy(e => e.FullName, StringComparer.Ordinal),
    ];

    internal IReadOnlyList<InboxFile> Read(string contentFolder)
    {
        try
        {
            return [.. Entries(contentFolder).Select(Read)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [NoFinding(Inbox.Name, "this folder cannot be read", "check who may read it, and whether the stick is still there")];
        }
    }

    /// <summary>An error that keeps a file out, as a warning: the library is sound without it.</summary>
    internal static Diagnostic Mistake(Diagnostic error) =>
        InboxCodes.Mistake.At(error.Place, $"not taken in: {error.Message} ({error.Code})", error.Hint);

    private InboxFile Read(FileSystemInfo entry)
    {
        var parent = Path.GetFileName(Path.GetDirectoryName(entry.FullName));
        var path = $"{parent}/{HiddenCharacters.Masked(entry.Name.Replace('\n', '\r').Replace('\t', '\r'))}";
        if (path != $"{parent}/{entry.Name}") return NoFinding(path, "the name of this file holds characters that nobody sees", "give it another name");
        if (entry.LinkTarget is not null) return NoFinding(path, "this is a link", "copy the file itself to this place");
        if (entry is not FileInfo file) return NoFinding(path, "this is a folder", "lay the files themselves into the inbox");
        if (!path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) && !path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase))
            return NoFinding(path, "this is not a file of findings, which ends in .yaml", "give it the right ending, or take it away");
        return Read(path, file);
    }

    private InboxFile Read(string path, FileInfo file)
    {
        var log = new DiagnosticLog();
        var one = ContentFolder.OfFile(path, file);
        if (TextFile.Read(one, path, log, out _) is not { } text) return new InboxFile(path) { Problems = [.. log.Found.Select(Mistake)] };
        var documents = new DocumentReader(log, new ReadingNotes());
        var read = YamlReader.Read(path, text, log).Select(d => (Raw: documents.Read(d), d.Root)).ToList();
        var errors = log.Found.Where(d => d.Severity == Severity.Error).Select(Mistake).ToList();
        if (errors.Count > 0) return new InboxFile(path) { Problems = errors };
        if (read.Count == 0) return NoFinding(path, "this file holds nothing", "take it away, or save the finding again");
        var records = read.Select(r => (r.Raw!.Type, r.Raw.Id, Map: (MapNode)r.Root!)).ToList();
        var problems = records.Select(r => Problem(r.Type, r.Id, r.Map)).OfType<Diagnostic>().ToList();
        var known = records.Where(r => Written(r.Id) is not null).ToList();
        if (problems.Count == 0 && known.Count > 0 && known.Count < records.Count)
            problems.Add(InboxCodes.OtherContent.At(known[0].Map.Place, $"'{known[0].Id}' is on record already, but not all of this file is", "take what is on record out of the file"));
        if (problems.Count == 0)
            foreach (var (_, id, map) in records) _taken[id] = WrittenRecord.Normal(map);
        return new InboxFile(path)
        {
            Bytes = Encoding.UTF8.GetBytes(text),
            Records = [.. records.Select(r => (r.Type, r.Id))],
            Problems = problems,
            IsKnown = problems.Count == 0 && known.Count == records.Count,
        };
    }

    private Diagnostic? Problem(RecordType type, string id, MapNode map)
    {
        if (!Takes.Contains(type))
            return InboxCodes.OtherType.At(map.Place, $"the inbox takes no {Words.Of(type)}, only claims, repairs and questions", "look at it, and lay it into your other files yourself if it is right");
        if (MintedId.OwnerOf(id) is { } owner && owner != MintedId.Owner(library.Card.Id))
            return InboxCodes.OtherLibrary.At(map.Place, $"'{id}' was recorded in the library '{owner}', this one is '{library.Card.Id}'", "bring another shop's copy in with crossref combine; if it is yours, give it another id");
        if (Written(id) is { } text && text != WrittenRecord.Normal(map))
            return InboxCodes.OtherContent.At(map.Place, $"'{id}' {(_taken.ContainsKey(id) ? "stands in another file of the inbox" : "is on record already")} and says something else", "give the new one another id; to correct a claim add withdraws: with the old id");
        return null;
    }

    private string? Written(string id) =>
        _taken.GetValueOrDefault(id) ??
        (library.Records.TryGetValue(id, out var record) ? WrittenRecord.Find(content, record) is { } map ? WrittenRecord.Normal(map) : "" : null);

    private static InboxFile NoFinding(string path, string message, string hint) =>
        new(path) { Problems = [InboxCodes.NoFinding.At(new Place(path, 0, 0), message, hint)] };
}
