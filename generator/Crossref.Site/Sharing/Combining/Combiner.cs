using System.Text.Json;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Histories;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Combining;

/// <summary>Brings another copy's records into a content folder.</summary>
public sealed class Combiner
{
    /// <summary>What came in last, for the page that shows it.</summary>
    public const string CameIn = ContentStore.OwnFolder + "/came-in.json";

    private readonly FolderTexts _ours;
    private readonly FolderTexts _theirs;
    private readonly HistoryBook _book;
    private readonly HistoryBook _theirBook;
    private readonly DateOnly _today;
    private readonly Layout _layout;
    private readonly PictureTaker _pictures;
    private readonly List<Decision> _decisions = [];
    private readonly Dictionary<string, RecordType> _touched;
    private readonly SortedDictionary<string, byte[]> _aside = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RecordText> _plainIds;

    private Combiner(FolderTexts ours, FolderTexts theirs, HistoryBook book, HistoryBook theirBook, DateOnly today)
    {
        (_ours, _theirs, _book, _theirBook, _today) = (ours, theirs, book, theirBook, today);
        _layout = new Layout(ours);
        _pictures = new PictureTaker(ours, theirs, _layout);
        _touched = ours.Records.ToDictionary(r => r.Key, r => r.Value.Type, StringComparer.Ordinal);
        _plainIds = ours.Records.Values.Where(r => !r.IsShop || r.Owner == ours.Library).ToLookup(r => r.Id, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
    }

    private string Us => _ours.Library!;

    private string Them => _theirs.Library!;

    private bool IsSame => Us == Them;

    /// <summary>Works out what combining comes to. Nothing is written.</summary>
    /// <param name="contentFolder">Our folder.</param>
    /// <param name="other">Theirs: a content folder, or a stick that holds one.</param>
    /// <param name="today">The day of what was not noted before.</param>
    public static CombinePlan Plan(string contentFolder, string other, DateOnly today)
    {
        var theirFolder = Path.Combine(other, "content") is var inner && Directory.Exists(inner) ? inner : other;
        var (ourLog, theirLog) = (new DiagnosticLog(), new DiagnosticLog());
        var (ours, theirs) = (FolderTexts.Read(contentFolder, ourLog), FolderTexts.Read(theirFolder, theirLog));
        foreach (var (texts, log) in new[] { (ours, ourLog), (theirs, theirLog) })
        {
            if (texts.Library is null && log.Found.All(d => d.Severity != Severity.Error))
                log.Add(CombiningCodes.NoOwner, new Place(".", 0, 0), "no document says whose library this is", "add a file library.yaml with library: and title:");
        }
        var (book, theirBook) = (History.Load(contentFolder, ours, ourLog), History.Load(theirFolder, theirs, theirLog));
        var found = DiagnosticOrder.Sort([.. ourLog.Found, .. theirLog.Found.Select(d => d with { Place = d.Place with { File = InTheirs(d.Place.File) } })]);
        var (us, them) = (ours.Library ?? "", theirs.Library ?? "");
        if (found.Any(d => d.Severity == Severity.Error)) return new CombinePlan(us, them, [], [], found);
        book.Note(ours, us, today);
        theirBook.Note(theirs, them, today);
        // What another copy of ours was told not to bring up again need not be asked here.
        if (us == them) book.Aside.UnionWith(theirBook.Aside);
        var combiner = new Combiner(ours, theirs, book, theirBook, today);
        combiner.Decide();
        return new CombinePlan(us, them, combiner._decisions, combiner.Changes(contentFolder), found);
    }

    private static string InTheirs(string file) => file == "." ? "the other copy" : "the other copy: " + file;

    private void Decide()
    {
        foreach (var name in _ours.Records.Keys.Union(_theirs.Records.Keys).Order(StringComparer.Ordinal))
        {
            var (ours, theirs) = (_ours.Records.GetValueOrDefault(name), _theirs.Records.GetValueOrDefault(name));
            if (theirs is null) Say(CombineOutcome.OnlyHere, ours!, ours!.File.Path);
            else if (ours is null) TakeIn(theirs, name);
            else if (ours.Type != theirs.Type) KeepAside(theirs, name, $"here '{ours.Id}' is a {Words.Of(ours.Type)}; one of the two needs another id");
            else Combine(ours, theirs, name);
        }
    }

    private void Combine(RecordText ours, RecordText theirs, string name)
    {
        var (here, there) = (_book.Records[name], _theirBook.Records[name]);
        var isForeign = !IsSame && (ours.IsShop ? ours.Owner == Us : !ours.File.Path.StartsWith(Owner.Folder + Them + "/", StringComparison.Ordinal));
        var joined = Joining.Join(here, there, isForeign ? ours.Owner == Us && ours.IsShop ? _ => true : Guard.Of(here, there) : _ => false);
        if (Strangers.Are(here, there) || here.IsApartFrom(there) || there.IsApartFrom(here) || !IsSound(joined, ours)) joined = here.Beside(there, isForeign);
        _book.Records[name] = joined;
        var text = joined.Text;
        var (changed, open) = (RecordText.Plain(text) != RecordText.Plain(ours.Text), joined.Conflicts.Select(c => Keys.Shown(c.Key)).ToList());
        if (changed)
        {
            _layout.Replace(ours, text);
            _pictures.Take(text, theirs.File.Path, ours.File.Path);
        }
        var outcome = open.Count > 0 && (changed || joined.Conflicts.Count != here.Conflicts.Count) ? CombineOutcome.ToChoose
            : RecordText.Plain(text) == RecordText.Plain(theirs.Text) ? changed ? CombineOutcome.TheirsNewer : CombineOutcome.Alike
            : changed ? CombineOutcome.Merged : CombineOutcome.OursNewer;
        if (outcome == CombineOutcome.ToChoose) Say(outcome, ours, ours.File.Path, open, Besides(Differing(here, joined), open));
        else Say(outcome, ours, ours.File.Path, outcome is CombineOutcome.Merged or CombineOutcome.TheirsNewer ? Differing(here, joined) : []);
    }

    private static List<string> Differing(RecordHistory before, RecordHistory after)
    {
        var (old, now) = (before.Shown.Values, after.Shown.Values);
        return [.. now.Keys.Union(old.Keys).Where(k => old.GetValueOrDefault(k) != now.GetValueOrDefault(k)).Select(k => Keys.IsComment(k) && Keys.Owner(k).Length == 0 ? "text" : Keys.Shown(k)).Distinct().Order(StringComparer.Ordinal)];
    }

    // What came in at keys about which nobody has to choose. Where whole texts are to be chosen from, nothing did.
    private static string Besides(List<string> changed, List<string> open) =>
        changed.Except(open, StringComparer.Ordinal).ToList() is { Count: > 0 } others && !open.Contains("") ? "Besides, theirs was taken at " + string.Join("; ", others) : "";

    // A record that would no longer be one, or no longer a sound one, is not merged by its keys.
    private static bool IsSound(RecordHistory joined, RecordText record)
    {
        if (joined.Only is not null) return true;
        var log = new DiagnosticLog();
        return RecordReading.Read(record.Type, record.Id, joined.Text, log) is { } found && found == (record.Type, record.Id) && log.Found.Count == 0;
    }

    // A record that only the other copy has.
    private void TakeIn(RecordText theirs, string name)
    {
        var isOurs = theirs.IsShop && theirs.Owner == Us;
        var (before, after) = (_book.Records.GetValueOrDefault(name), _theirBook.Records[name]);
        if (before is not null && before.Type == theirs.Type)
        {
            // Known and gone: it comes back as it was last seen here, or newer from another copy of ours.
            var joined = Joining.Join(before, after, IsSame ? _ => false : isOurs ? _ => true : Guard.Of(before, after));
            _book.Records[name] = IsSound(joined, theirs) ? joined : before;
            Lay(theirs with { Text = _book.Records[name].Text }, name, CombineOutcome.Restored);
        }
        else if (isOurs && !IsSame)
        {
            KeepAside(theirs, name, "it says it is ours, and nobody here knows it; if it is, copy it into a file of records");
        }
        else if (!(theirs.IsShop && theirs.Owner != Us) && _plainIds.TryGetValue(theirs.Id, out var other))
        {
            KeepAside(theirs, name, $"here '{theirs.Id}' is a {Words.Of(other.Type)}; one of the two needs another id");
        }
        else
        {
            _book.Records[name] = after;
            Lay(theirs, name, CombineOutcome.New);
        }
    }

    private void Lay(RecordText record, string name, CombineOutcome outcome)
    {
        _touched[name] = record.Type;
        _plainIds.TryAdd(record.Id, record);
        var file = _layout.Add(record, Target(record.File.Path));
        _pictures.Take(record.Text, record.File.Path, file);
        var open = _book.Records[name].Conflicts.Select(c => Keys.Shown(c.Key)).ToList();
        Say(outcome, record, file, open);
    }

    // Ours and what everybody has in one folder lie where they lay there; what is another library's lies in a folder of its own.
    private string Target(string path)
    {
        if (IsSame) return path;
        var ours = Owner.Folder + Us + "/";
        if (path.StartsWith(ours, StringComparison.Ordinal)) return path[ours.Length..];
        return path.StartsWith(Owner.Folder, StringComparison.Ordinal) ? path : Owner.Folder + Them + "/" + path;
    }

    private void KeepAside(RecordText theirs, string name, string why)
    {
        var hash = RecordText.Hash(theirs.Text, [name]);
        var path = ConflictFile.PathOf(theirs.Type, name);
        if (!_book.Aside.Add(hash) || _touched.GetValueOrDefault(name) == theirs.Type && _book.Records.GetValueOrDefault(name)?.Conflicts.Count > 0) return;
        var choices = new List<ConflictChoice> { new(null, "", ""), new(theirs.Text, Them, FormattableString.Invariant($"{_today:yyyy-MM-dd}")) };
        _aside[path] = ConflictFile.Write(new Conflict(theirs.Type, name, path, [new ConflictKey("", choices)]));
        Say(CombineOutcome.KeptAside, theirs, path, [], why);
    }

    private void Say(CombineOutcome outcome, RecordText record, string file, IReadOnlyList<string>? keys = null, string why = "") =>
        _decisions.Add(new Decision(outcome, record.Type, record.Name, file, keys ?? [], why));

    private List<FileChange> Changes(string contentFolder)
    {
        var changes = _layout.Changes().Concat(_aside.Select(a => new FileChange(a.Key, a.Value))).ToList();
        _decisions.AddRange(_pictures.Decisions);
        var cameIn = _decisions.Where(d => d.Outcome is not (CombineOutcome.Alike or CombineOutcome.OnlyHere or CombineOutcome.OursNewer)).ToList();
        changes.AddRange(History.Changes(contentFolder, _ours, _book, _touched));
        if (cameIn.Count > 0) changes.Add(new FileChange(CameIn, JsonSerializer.SerializeToUtf8Bytes(new { date = FormattableString.Invariant($"{_today:yyyy-MM-dd}"), from = Them, records = cameIn.Select(ToJson) })));
        return changes;
    }

    private static object ToJson(Decision decision) => new
    {
        outcome = Words.Of(decision.Outcome), type = Words.Of(decision.Type), id = decision.Name, file = decision.File, keys = decision.Keys, why = decision.Why,
    };
}
