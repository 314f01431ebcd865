using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Mapping;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Sheets;

/// <summary>
/// Reads a sheet of parts or bags into a library: finds everything wrong before anything is written, adds what is new,
/// and never changes what is on record.
/// </summary>
public sealed class SheetImport
{
    private readonly DateOnly _today;
    private readonly Sheet? _sheet;
    private readonly DiagnosticLog _log = new();
    private readonly KnownRecords _known;
    private readonly List<MapNode> _new = [];
    private readonly List<string> _newIds = [], _knownIds = [];
    private readonly HashSet<string> _lost = new(StringComparer.Ordinal);

    /// <summary>Reads a sheet.</summary>
    /// <param name="stream">Its bytes.</param>
    /// <param name="name">The name it has in what is reported.</param>
    /// <param name="library">The library.</param>
    /// <param name="today">The day that the new file carries.</param>
    /// <exception cref="IOException">The sheet cannot be read.</exception>
    public SheetImport(Stream stream, string name, Library library, DateOnly today)
    {
        _today = today;
        _sheet = SheetReader.Read(stream, name, _log);
        _known = new KnownRecords(library);
    }

    /// <summary>Stands for a field where a column is to be left out.</summary>
    public const string NotUsed = "nothing";

    /// <summary>What the rows of a sheet may be.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. SheetKind.All.Select(k => k.Name)];

    /// <summary>The headings of the sheet, so that a mistyped one can be told; empty when it cannot be read.</summary>
    public IReadOnlyList<string> Headings => _sheet is null ? [] : [.. _sheet.Headings.Cells.Select(c => c.Trim())];

    /// <summary>The titles of the fields that columns can be read as.</summary>
    public static IReadOnlyList<string> FieldsOf(string? kind) =>
        [.. SheetKind.All.Where(k => kind is null || k.Name == kind).SelectMany(k => k.Fields).Select(f => f.Title).Distinct(), NotUsed];

    /// <summary>Whether a word names a field, by its title or a usual synonym.</summary>
    public static bool IsField(string? kind, string word) =>
        word == NotUsed || SheetKind.All.Any(k => (kind is null || k.Name == kind) && k.Find(word) is not null);

    /// <summary>What would come of it.</summary>
    /// <param name="contentFolder">The library's folder.</param>
    /// <param name="read">The library as it was read.</param>
    /// <param name="kind">Parts or bags; null to go by the columns.</param>
    /// <param name="named">Fields by the heading of their column, where that says something else.</param>
    public ImportPlan Plan(string contentFolder, ReadResult read, string? kind, IReadOnlyDictionary<string, string> named)
    {
        var asked = SheetKind.All.FirstOrDefault(k => k.Name == kind);
        if (_sheet is null) return new ImportPlan(kind ?? "", null, [], DiagnosticOrder.Sort(_log.Found), [], [], []);
        var columns = ColumnMap.Of(_sheet, asked, named);
        columns.Report(_sheet, _log);
        var rows = new SheetRows(_sheet, columns, _known, _log);
        foreach (var row in _sheet.Rows) Read(row, rows, columns.Kind);
        var files = new NewFiles(_new, columns.Kind.Folder, _today);
        var found = DiagnosticOrder.Sort(_log.Found.Concat(Caused(contentFolder, read, files).Select(files.InSheet)));
        var plan = new ImportPlan(columns.Kind.Name, _sheet.Written,
            [.. _sheet.Headings.Cells.Select((h, i) => new ImportColumn(ImportColumn.LetterOf(i), h.Trim(), columns.Fields[i]?.Title))], found, _newIds, _knownIds, []);
        return plan.HasErrors ? plan : plan with { Changes = [.. files.Bytes.Select(f => new FileChange(f.Key, f.Value) { MustBeNew = true })] };
    }

    private void Read(SheetRow row, SheetRows rows, SheetKind kind)
    {
        var before = _log.Found.Count;
        var map = rows.Read(row);
        if (map is null) return;
        var id = ((ScalarNode)map.Entries[0].Value).Text;
        if (_log.Found.Skip(before).Any())
        {
            _lost.Add(id);
            return;
        }
        var record = new RecordMapper(new AddressBook([]), _log).Map(new RawRecord(kind.Shape.Type!.Value, id, map));
        if (rows.OnRecord(record) is { } other) Compare(row, rows, record, other);
        else
        {
            _new.Add(map);
            _newIds.Add(id);
        }
    }

    private void Compare(SheetRow row, SheetRows rows, IRecord record, IRecord other)
    {
        var differences = rows.Differences(row, record, other).ToList();
        foreach (var (field, place) in differences)
        {
            _log.Add(SheetCodes.OtherValue, place,
                $"{other.Id} is on record with {(field.Write(other) is { Length: > 0 } value ? $"{field.Title} {ScalarChecker.Shown(value)}" : $"no {field.Title}")}, here it says {ScalarChecker.Shown(field.Write(record) ?? "nothing")}",
                $"correct the cell, or the record in {other.Place}; an import changes nothing that is on record");
        }
        if (differences.Count == 0) _knownIds.Add(other.Id);
    }

    // The new text goes through the same reading and the same checks as if it lay in the folder already.
    private IEnumerable<Diagnostic> Caused(string contentFolder, ReadResult read, NewFiles files)
    {
        var folder = ContentFolder.Open(contentFolder, new DiagnosticLog());
        var after = ContentReader.Read(folder.With(files.Bytes), new DiagnosticLog());
        var context = after.ContextFor(_today);
        var found = after.Diagnostics.Concat(Checks.Run(after.Library!, context with { Lost = _lost.Concat(context.Lost).ToHashSet(StringComparer.Ordinal) }));
        return found.Except(read.Check(_today));
    }
}
