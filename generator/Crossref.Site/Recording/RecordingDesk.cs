using System.Globalization;
using Crossref.Core.Checking;
using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Mapping;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>
/// Where records are formed and tried before they are written. What is on record already is never changed: a new record
/// is a new file.
/// </summary>
public sealed class RecordingDesk
{
    private readonly ContentFolder _folder;
    private readonly Library _library;
    private readonly IReadOnlyList<Diagnostic> _before;
    private readonly DateOnly _today;
    private readonly HashSet<string> _names;

    /// <summary>Sits down with a folder as it was read.</summary>
    /// <param name="contentFolder">The folder.</param>
    /// <param name="read">What was read of it; it must hold a library.</param>
    /// <param name="today">The day that new records carry.</param>
    public RecordingDesk(string contentFolder, ReadResult read, DateOnly today)
    {
        _folder = ContentFolder.Open(contentFolder, new DiagnosticLog());
        _library = read.Library ?? throw new ArgumentException("There is no library.", nameof(read));
        _before = read.Check(today);
        _today = today;
        _names = NamesIn(_folder);
    }

    /// <summary>The library before anything new.</summary>
    public Library Library => _library;

    /// <summary>A finding, out of the fields of <see cref="ClaimForm"/>.</summary>
    public NewRecord Claim(IReadOnlyDictionary<string, string> fields) => Form(RecordType.Claim, ClaimForm.Body(fields, _today));

    /// <summary>
    /// A repair, out of the fields and lines of <see cref="RepairForm"/>, and the bags that it fills: a line that says
    /// <c>to=bag</c> makes one.
    /// </summary>
    /// <returns>The repair, then its bags.</returns>
    public IReadOnlyList<NewRecord> Repair(IReadOnlyDictionary<string, string> fields, ILookup<string, RepairLine> lines)
    {
        var bags = lines["removed"].Where(l => l["to"] == "bag").GroupBy(RepairForm.BagKey).ToDictionary(b => b.Key, b => Bag(fields, b.First(), b.Count()), StringComparer.Ordinal);
        var repair = Form(RecordType.Repair, RepairForm.Body(fields, lines, bags.ToDictionary(b => b.Key, b => b.Value.Id, StringComparer.Ordinal), _today));
        return [repair, .. bags.Values];
    }

    /// <summary>
    /// A later look at a machine: a repair that only notes its counter, up to which everything fitted there has run. Where
    /// a fitting has damaged its neighbours, a claim says so and takes the place of what the fitting alone would show.
    /// </summary>
    /// <param name="fields">Machine, count, neighbours, by and note, as in <see cref="RepairForm"/>.</param>
    /// <param name="damaging">The fitting that damaged its neighbours; null for none.</param>
    public IReadOnlyList<NewRecord> Recheck(IReadOnlyDictionary<string, string> fields, OpenFitting? damaging)
    {
        var noted = new Dictionary<string, string>(fields, StringComparer.Ordinal) { ["outcome"] = Words.Of(Outcome.Running) };
        var repair = Repair(noted, Array.Empty<RepairLine>().ToLookup(_ => ""))[0];
        if (damaging is not { Fitting: var fitting } || Shown(repair, damaging) is not { } shown) return [repair];
        var claim = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["part"] = fitting.Part.Id,
            ["at"] = fitting.Position.Id,
            ["verdict"] = Words.Of(shown.Verdict),
            ["basis"] = Words.Of(shown.Basis),
            ["change"] = shown.Change ?? "",
            ["machine"] = fields["machine"],
            ["neighbours"] = "damaged",
            ["source"] = repair.Id,
            ["by"] = fields.GetValueOrDefault("by") ?? "",
            ["withdraws"] = damaging.ClaimId,
        };
        if (shown.Run is { } run) claim[Words.Of(run.Unit)] = run.Value.ToString("0", CultureInfo.InvariantCulture);
        return [repair, Claim(claim)];
    }

    // What the fitting shows once the counter of today is known.
    private Statement? Shown(NewRecord repair, OpenFitting fitting) =>
        Try([repair]) is { IsRefused: false } tried
            ? new StatementBook(tried.After).Direct(fitting.Fitting.Part.Id, fitting.Fitting.Position.Id).FirstOrDefault(s => s.Id == fitting.ClaimId)
            : null;

    private NewRecord Bag(IReadOnlyDictionary<string, string> fields, RepairLine line, int times)
    {
        var address = AddressOf(fields, line.Position);
        var places = line["quantity"] ?? _library.Positions.GetValueOrDefault(address)?.Quantity.ToString(CultureInfo.InvariantCulture) ?? "1";
        // A line that is typed twice puts its pieces in twice.
        if (times > 1 && int.TryParse(places, NumberStyles.None, CultureInfo.InvariantCulture, out var pieces)) places = (pieces * times).ToString(CultureInfo.InvariantCulture);
        return Form(RecordType.Bag, RepairForm.Bag(fields, line, address, places, _today));
    }

    // A bag may lie in another house one day; there a position needs its whole address.
    private string AddressOf(IReadOnlyDictionary<string, string> fields, string position)
    {
        var unit = fields.TryGetValue("unit", out var u) ? _library.Units.GetValueOrDefault(u) : null;
        var family = fields.TryGetValue("machine", out var m) ? _library.Machines.GetValueOrDefault(m)?.Family.Id : unit?.Family.Id;
        var assembly = fields.GetValueOrDefault("assembly") ?? unit?.Assembly.Id.Split('/')[^1];
        return AddressBook.Position(new Ref(position, default), family, assembly).Id is { Length: > 0 } address ? address : position;
    }

    /// <summary>Looks what the checks say of the library with new records in it.</summary>
    public Proposal Try(IReadOnlyList<NewRecord> records)
    {
        var log = new DiagnosticLog();
        var after = ContentReader.Read(_folder.With(records.Where(r => !r.IsKnown).ToDictionary(r => r.File, r => r.Bytes)), log);
        return new Proposal(records, after.Library!, [.. after.Check(_today).Except(_before)]);
    }

    internal NewRecord Form(RecordType type, MapNode body)
    {
        var says = YamlText.Write(body);
        for (var taken = 0; ; taken++)
        {
            var id = MintedId.Of(_today, _library.Card.Id, says, taken);
            var text = $"{Words.Of(type)}: {id}\n{says}";
            if (!_library.Records.TryGetValue(id, out var other)) return new NewRecord(type, id, FreeFile(_names, type, id), text, IsKnown: false);
            if (WrittenRecord.Find(_folder, other) is { } map && WrittenRecord.Normal(map) == WrittenRecord.Normal(WithId(type, id, body)))
                return new NewRecord(type, id, other.Place.File, text, IsKnown: true);
        }
    }

    /// <summary>The names of a folder's files; two that differ in their capitals alone are one name on some disks.</summary>
    internal static HashSet<string> NamesIn(ContentFolder folder) => folder.Files.Keys.ToHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>A file for a new record that no name stands in the way of; it is among the names from then on.</summary>
    internal static string FreeFile(HashSet<string> names, RecordType type, string id)
    {
        var start = $"{FolderOf(type)}/{id}";
        for (var number = 1; ; number++)
        {
            var path = number == 1 ? $"{start}.yaml" : FormattableString.Invariant($"{start}-{number}.yaml");
            if (names.Add(path)) return path;
        }
    }

    private static string FolderOf(RecordType type) => type == RecordType.Bag ? "shop/bags" : Words.Of(type) + "s";

    private static MapNode WithId(RecordType type, string id, MapNode body) =>
        body with { Entries = [new MapEntry(Words.Of(type), default, new ScalarNode(default, id)), .. body.Entries] };
}
