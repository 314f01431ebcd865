using System.Globalization;
using System.Text.Json.Nodes;
using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;

namespace Crossref.Site.Pages.Recording;

/// <summary>
/// The script that hands the page for findings what it offers and checks against. Plain ASCII, so that no declared
/// encoding matters and no character ends a text early.
/// </summary>
internal static class RecordScript
{
    internal const string Path = "record-data.js";

    internal static SiteFile Of(Desk desk)
    {
        var library = desk.Library;
        var data = new JsonObject
        {
            ["library"] = library.Card.Id,
            ["date"] = desk.Options.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["needed"] = new JsonObject(Enum.GetValues<CountUnit>().Select(u =>
                KeyValuePair.Create(Words.Of(u), (JsonNode?)library.Card.Proving.NeededToCount(u)))),
            ["families"] = Array(library.Families.Values, f => f.Id, f => new JsonObject { ["id"] = f.Id, ["name"] = f.Name }),
            ["machines"] = Array(library.Machines.Values.Where(m => !Owner.IsElsewhere(m)), m => m.Id, m => Machine(desk, m)),
            ["positions"] = Array(library.Positions.Values, p => p.Address, p => Position(library, p)),
            ["sources"] = Sources(desk),
            ["people"] = Texts(People(library)),
            ["parts"] = Parts(library),
        };
        return SiteFile.Text(Path, $"window.crossrefRecordData = {data.ToJsonString()};\n");
    }

    private static JsonObject Machine(Desk desk, Machine machine) => new()
    {
        ["id"] = machine.Id,
        ["name"] = desk.Library.MachineName(machine.Id),
        ["family"] = machine.Family.Id,
        ["facts"] = MachineAnswers.Facts(desk.Library, machine),
        ["unit"] = Words.Of(LastReading.UnitOf(desk.Library, machine.Id)),
        ["retired"] = machine.Retired,
    };

    private static JsonObject Position(Library library, Position position) => new()
    {
        ["id"] = position.Address,
        ["name"] = position.Name,
        ["family"] = position.Family,
        ["assembly"] = library.Assemblies[$"{position.Family}/{position.Assembly}"].Name,
        ["listed"] = Texts(position.Listed.Select(l => l.Part.Id).Distinct(StringComparer.Ordinal)),
        ["orientation"] = Texts(position.Orientation.OrderBy(o => o.Key, StringComparer.Ordinal).Select(o => $"{o.Key}: {o.Value}")),
        ["safety"] = library.IsSafety(position),
    };

    // Those that most rests on come first. A repair is a source too.
    private static JsonArray Sources(Desk desk) => new(
    [
        .. desk.Library.Sources.Values.OrderByDescending(s => desk.Index.ClaimsFrom(s.Id).Count()).ThenBy(s => s.Id, StringComparer.Ordinal)
            .Select(s => Source(s, s.Title, Words.Of(s.Kind).Replace('-', ' '), desk.Library.Documents(new Ref(s.Id, default)))),
        .. desk.Library.Repairs.Values.Where(r => !Owner.IsElsewhere(r)).OrderByDescending(r => r.Date).ThenByDescending(r => r.Id, StringComparer.Ordinal)
            .Select(r => Source(r, $"Repair {r.Id}", string.Join(", ", new[] { r.Date.ToString(), r.Machine is { } m ? desk.Library.MachineName(m.Id) : null, r.By }.OfType<string>()), false)),
    ]);

    private static JsonObject Source(IRecord record, string title, string detail, bool documents) => new()
    {
        ["id"] = record.Id,
        ["title"] = title,
        ["detail"] = detail,
        ["documents"] = documents,
        ["retired"] = record.Retired,
    };

    // Of this shop, whoever recorded most first.
    private static IEnumerable<string> People(Library library) => library.Claims.Values.Where(c => !Owner.IsElsewhere(c)).Select(c => c.By)
        .Concat(library.Repairs.Values.Where(r => !Owner.IsElsewhere(r)).Select(r => r.By)).OfType<string>()
        .GroupBy(by => by, StringComparer.Ordinal).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key);

    // One text, a line a part: a library has thousands, and a text is read faster than as many objects. No text of a
    // record holds a tab or a line feed.
    private static string Parts(Library library) => string.Join('\n', library.Parts.Values.OrderBy(p => p.Id, StringComparer.Ordinal).Select(p => string.Join('\t',
        [p.Id, p.Name ?? "", p.Maker ?? "", $"{(p.IsSafety ? "s" : "")}{(p.Handed ? "h" : "")}{(p.Retired ? "r" : "")}", .. p.AllNumbers])));

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => JsonValue.Create(t))]);

    private static JsonArray Array<T>(IEnumerable<T> items, Func<T, string> order, Func<T, JsonNode> each) =>
        new([.. items.OrderBy(order, StringComparer.Ordinal).Select(each)]);
}
