using Crossref.Core.Checking.Codes;
using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>Mistakes between records: each names what is changed or added, and where it should be reported.</summary>
internal static class RecordPlants
{
    private const string Family2 = "+family: velm-c7\nname: C7\nmaker: Velm\nassemblies:\n  - assembly: head\n    name: Head\n    positions:\n      - position: roller\n        name: Roller\n        kind: bearing\n";

    /// <summary>
    /// A mistake, its code, where it is reported, and what is done: <c>id:path=raw</c> writes a value, <c>id:path-</c>
    /// takes a key out, <c>+</c> adds documents.
    /// </summary>
    private static readonly (string Mistake, string Code, string At, string[] Changes)[] Table =
    [
        ("retired, but referred to", "CR0407", "gear-left:source", ["+source: old-list\ntype: manual\ntitle: Old\nretired: true\n", "gear-left:source=old-list"]),
        ("retired, but referred to", "CR0407", "later-gear-pin:about/1", ["later-gear-pin:about/1=old-part"]),
        ("retired, but referred to", "CR0407", "kit-1:contains/1/part", ["kit-1:contains/1/part=old-part"]),
        ("retired, but referred to", "CR0407", "brg-os-1303:superseded-by", ["brg-os-1303:superseded-by=old-part"]),
        ("role of no position", "CR0408", "squeal:suspects/0", ["squeal:suspects/0=fold/xyzzy"]),
        ("model of another family", "CR0409", "folder-1:model", ["folder-1:model=F9"]),
        ("model of another family", "CR0409", "2026-02-11-ferry-lane-k3f9:only-if", ["2026-02-11-ferry-lane-k3f9:only-if/models/0=F9"]),
        ("model of another family", "CR0409", "ostrin-f2:assemblies/0/positions/0/listed/1/only-if", ["ostrin-f2:assemblies/0/positions/0/listed/1/only-if={models: [F9]}"]),
        ("position of another family", "CR0410", "extra-claim:at", [Family2, "+claim: extra-claim\npart: brg-os-1203\nat: velm-c7/head/roller\nverdict: fits\nbasis: seated\nmachine: folder-1\nsource: workshop-log\n"]),
        ("position of another family", "CR0410", "b-2025-117:position", [Family2, "b-2025-117:position=velm-c7/head/roller"]),
        ("position of another family", "CR0410", "repair-2026-014:found/1/position", [Family2, "repair-2026-014:found/1/position=velm-c7/head/roller"]),
        ("position of another family", "CR0410", "ostrin-f2:assemblies/0/positions/0/damages-next/0", [Family2, "ostrin-f2:assemblies/0/positions/0/damages-next/0=velm-c7/head/roller"]),
        ("number claimed twice", "CR0501", "brg-os-1303:numbers/0", ["brg-os-1303:numbers/0=OS-1203-02"]),
        ("number claimed twice", "CR0501", "brg-os-1303:numbers/0", ["brg-os-1303:numbers/0=os 1203 02"]),
        ("number claimed twice", "CR0501", "brg-os-1303:numbers/0", ["brg-os-1303:numbers/0=OS-1203-01"]),
        ("number claimed twice", "CR0501", "brg-os-1303:earlier-numbers/0", ["brg-os-1303:earlier-numbers=[OS-1203-02]"]),
        ("one part in two records", "CR0502", "brg-os-1203:also/0/number", ["brg-os-1203:also/0/number=VM-0907"]),
        ("superseded in a circle", "CR0503", "brg-os-1203:superseded-by", ["brg-os-1303:superseded-by=brg-os-1203"]),
        ("superseded by itself", "CR0503", "brg-os-1203:superseded-by", ["brg-os-1203:superseded-by=brg-os-1203"]),
        ("mirror of another part", "CR0504", "gear-left:mirror", ["gear-left:mirror=brg-os-1203"]),
        ("mirror left out", "CR0504", "gear-right:mirror", ["gear-left:mirror-"]),
        ("its own mirror", "CR0504", "gear-left:mirror", ["gear-left:mirror=gear-left"]),
        ("mirrors of one hand", "CR0505", "gear-right:mirror", ["gear-right:hand=left"]),
        ("mirrors of one hand", "CR0505", "gear-right:mirror", ["gear-left:hand=right"]),
        ("kit in itself", "CR0506", "kit-1:contains/1/part", ["kit-1:contains/1/part=kit-1"]),
        ("kind of another position", "CR0507", "extra-claim:part", ["+claim: extra-claim\npart: brg-vm-0907\nat: ostrin-f2/feed/sheet-sensor\nverdict: fits\nbasis: told\n"]),
        ("kind of another position", "CR0507", "ostrin-f2:assemblies/1/positions/0/listed/0", ["ostrin-f2:assemblies/1/positions/0/listed=[brg-vm-0907]"]),
        ("withdraws itself", "CR0601", "2026-03-01-ferry-lane-w1w1:withdraws", ["2026-03-01-ferry-lane-w1w1:withdraws=2026-03-01-ferry-lane-w1w1"]),
        ("withdraws in a circle", "CR0601", "2026-02-11-ferry-lane-k3f9:withdraws", ["2026-02-11-ferry-lane-k3f9:withdraws=2026-03-01-ferry-lane-w1w1", "2026-03-01-ferry-lane-w1w1:date=2026-02-11"]),
        ("withdraws another fact", "CR0602", "2026-03-01-ferry-lane-w1w1:withdraws", ["2026-03-01-ferry-lane-w1w1:withdraws=2026-02-12-ferry-lane-b2c3"]),
        ("withdraws another fact", "CR0602", "2026-03-01-ferry-lane-w1w1:withdraws", ["2026-03-01-ferry-lane-w1w1:part=brg-os-1303"]),
        ("withdraws another fact", "CR0602", "2026-03-02-ferry-lane-w2w2:withdraws", ["2026-03-02-ferry-lane-w2w2:part=brg-os-1303"]),
        ("documented without a document", "CR0603", "2026-02-12-ferry-lane-b2c3:basis", ["2026-02-12-ferry-lane-b2c3:basis=documented"]),
        ("documented without a document", "CR0603", "2026-02-12-ferry-lane-d4e5:basis", ["2026-02-12-ferry-lane-d4e5:basis=documented"]),
        ("no source", "CR0604", "2026-02-12-ferry-lane-d4e5:basis", ["2026-02-12-ferry-lane-d4e5:basis=measured"]),
        ("no source", "CR0604", "2026-02-12-ferry-lane-b2c3:basis", ["2026-02-12-ferry-lane-b2c3:source-"]),
        ("run too short", "CR0605", "extra-claim:sheets", ["+claim: extra-claim\npart: brg-os-1203\nreplaces: brg-os-1303\nverdict: fits\nbasis: ran\nsheets: 40\nmachine: folder-1\nsource: workshop-log\n"]),
        ("serials reversed", "CR0606", "2026-02-11-ferry-lane-k3f9:only-if", ["2026-02-11-ferry-lane-k3f9:only-if/serial-from=3100"]),
        ("serials reversed", "CR0606", "ostrin-f2:assemblies/0/positions/0/listed/1/only-if", ["ostrin-f2:assemblies/0/positions/0/listed/1/only-if={serial-from: 20, serial-to: 10}"]),
        ("serials not comparable", "CR0607", "2026-02-11-ferry-lane-k3f9:only-if", ["2026-02-11-ferry-lane-k3f9:only-if/serial-from=AB2200"]),
        ("serials not comparable", "CR0607", "2026-02-11-ferry-lane-k3f9:only-if", ["2026-02-11-ferry-lane-k3f9:only-if/serial-to=29-99"]),
        ("replaces itself", "CR0608", "2026-02-12-ferry-lane-b2c3:replaces", ["2026-02-12-ferry-lane-b2c3:replaces=brg-vm-0907"]),
        ("fitted, which way round?", "CR0701", "bench-1:fitted/0", ["bench-1:fitted/0/orientation-"]),
        ("listed, which way round?", "CR0702", "ostrin-f2:assemblies/0/positions/1/listed/0", ["ostrin-f2:assemblies/0/positions/1/orientation-"]),
        ("bag below zero", "CR0703", "repair-2026-014:fitted/0/from", ["b-2025-117:quantity=0"]),
        ("bag below zero", "CR0703", "repair-2026-014:fitted/0/from", ["repair-2026-014:fitted/0/quantity=3"]),
        ("counter backwards", "CR0704", "folder-1:readings/1", ["folder-1:readings/1={date: 2026-03-01, sheets: 5}"]),
        ("counter backwards", "CR0704", "folder-1:readings/0", ["repair-2026-014:sheets=1298000", "repair-2026-014:date=2026-02-10"]),
        ("bag of another part", "CR0705", "repair-2026-014:fitted/0/from", ["b-2025-117:part=brg-os-1203"]),
        ("order of another part", "CR0705", "bench-1:fitted/0/from", ["2026-02-11-ferry-lane-q8d2:part=brg-os-1203", "bench-1:fitted/0/from=2026-02-11-ferry-lane-q8d2"]),
        ("unit in a machine of another family", "CR0706", "head-a:in", [Family2, "+machine: copier\nfamily: velm-c7\n", "head-a:in=copier"]),
        ("swap of another assembly", "CR0707", "repair-2026-014:swapped/assembly", ["repair-2026-014:swapped/assembly=feed"]),
        ("swap of another assembly", "CR0707", "repair-2026-014:swapped/in", ["+unit: feeder\nfamily: ostrin-f2\nassembly: feed\n", "repair-2026-014:swapped/in=feeder"]),
        ("dates reversed", "CR0802", "2026-02-11-ferry-lane-q8d2:expected", ["2026-02-11-ferry-lane-q8d2:expected=2026-01-16"]),
        ("dates reversed", "CR0802", "2026-02-11-ferry-lane-q8d2:received", ["2026-02-11-ferry-lane-q8d2:received=2025"]),
        ("dates reversed", "CR0802", "2026-02-11-ferry-lane-q8d2:date", ["2026-02-11-ferry-lane-q8d2:date=2026-05-11"]),
        ("fitted before it was there", "CR0803", "repair-2026-014:fitted/0/from", ["b-2025-117:date=2026-05-02"]),
        ("fitted before it was there", "CR0803", "bench-1:fitted/0/from", ["bench-1:fitted/0/from=2026-02-11-ferry-lane-q8d2", "bench-1:date=2026-02-16"]),
        ("fitted, but not received", "CR0803", "bench-1:fitted/0/from", ["bench-1:fitted/0/from=2026-02-11-ferry-lane-q8d2", "2026-02-11-ferry-lane-q8d2:received-"]),
        ("withdrawn before it was claimed", "CR0804", "2026-03-01-ferry-lane-w1w1:withdraws", ["2026-03-01-ferry-lane-w1w1:date=2026-01-01"]),
        ("withdrawn before it was claimed", "CR0804", "2026-03-01-ferry-lane-w1w1:withdraws", ["2026-02-11-ferry-lane-k3f9:date=2026-04-01"]),
        ("designation nobody knows", "CR0901", "brg-vm-0907:standard", ["brg-vm-0907:standard=6999"]),
        ("size that its designation contradicts", "CR0902", "brg-os-1303:size", ["brg-os-1303:standard=6001", "brg-os-1303:size={outside: 28.5}"]),
        ("size that must match, and a claim", "CR0903", "extra-claim:verdict", ["brg-os-1303:standard=6002-2RS", "+claim: extra-claim\npart: brg-os-1303\nreplaces: brg-os-1203\nverdict: fits\nbasis: told\n"]),
        ("size, and a claim without a change", "CR0903", "extra-claim:verdict", ["brg-os-1303:size={width: 9}", "+claim: extra-claim\npart: brg-os-1303\nreplaces: brg-os-1203\nverdict: fits\nbasis: told\n"]),
        ("position without its assembly", "CR0218", "repair-2026-014:found/0/position", ["repair-2026-014:assembly-"]),
        ("a second library", "CR0002", "second:library", ["+library: second\ntitle: Second\n"]),
        ("address written twice", "CR0402", "ostrin-f2:assemblies/1", ["ostrin-f2:assemblies/1/assembly=fold-head", "ostrin-f2:assemblies/0/positions/0/breaks-when-opened-", "repair-2026-014:found/1/position=roller-2-gear"]),
    ];

    internal static IEnumerable<Plant> All(Bed bed) => Table.Select(row => new Plant(row.Mistake, row.At, () => Do(bed, row.Changes), () =>
    {
        var (document, path) = Split(bed, row.At);
        return new Report(row.Code, document.File, document.Root.At(path).Line);
    }));

    /// <summary>Every document once more, every assembly and every position once more.</summary>
    internal static IEnumerable<Plant> Copies(Bed bed)
    {
        foreach (var document in bed.Documents.Where(d => d.Body is null).ToList())
        {
            var copy = new BedDocument("zz.yaml", document.Root.Copy(), document.Shape);
            var code = document.Shape.Name == "library" ? FileCodes.SecondLibrary.Code : "CR0401";
            yield return new Plant("duplicate id", $"{document}", () =>
            {
                bed.Documents.Add(copy);
                return () => bed.Documents.Remove(copy);
            }, () => new(code, copy.File, copy.Root.Line));
            foreach (var list in Walker.Values(document).Where(v => v.Name is "assemblies" or "positions" && v.Value.Rows is not null).Select(v => v.Value.Rows!))
                foreach (var row in list.ToList())
                {
                    var twin = row.Copy();
                    yield return new Plant("duplicate address", $"{document}/{row.Keys![0].Value.Raw}", () =>
                    {
                        list.Add(twin);
                        return () => list.Remove(twin);
                    }, () => new("CR0402", document.File, twin.Line));
                }
        }
    }

    private static Action Do(Bed bed, string[] changes)
    {
        var undo = changes.Select(c => Do(bed, c)).Reverse().ToList();
        return () => undo.ForEach(u => u());
    }

    private static Action Do(Bed bed, string change)
    {
        if (change[0] == '+')
        {
            var added = bed.Add("zz.yaml", change[1..]);
            return () => bed.Documents.RemoveAll(added.Contains);
        }
        var isRemoval = change[^1] == '-';
        var (place, raw) = isRemoval ? (change[..^1], "") : (change[..change.IndexOf('=', StringComparison.Ordinal)], change[(change.IndexOf('=', StringComparison.Ordinal) + 1)..]);
        var (document, path) = Split(bed, place);
        var (parent, key) = path.Contains('/', StringComparison.Ordinal) ? (path[..path.LastIndexOf('/')], path[(path.LastIndexOf('/') + 1)..]) : ("", path);
        var map = document.Root.At(parent);
        if (map.Rows is { } rows)
        {
            var (at, old) = (int.Parse(key), rows[int.Parse(key)]);
            rows[at] = new Item { Raw = raw };
            return () => rows[at] = old;
        }
        var was = map.Keys!.ToList();
        var index = was.FindIndex(e => e.Key == key);
        if (isRemoval) map.Keys!.RemoveAt(index);
        else if (index < 0) map.Keys!.Add(new Entry(key, Value(raw)));
        else map.Keys![index] = new Entry(key, Value(raw));
        return () => map.Keys = was;
    }

    // A list in one line becomes one with rows, so that a row of it can be pointed at.
    private static Item Value(string raw) =>
        raw[0] == '[' ? new Item { Rows = [new Item { Raw = raw[1..^1] }] } : new Item { Raw = raw };

    private static (BedDocument Document, string Path) Split(Bed bed, string place)
    {
        var colon = place.IndexOf(':', StringComparison.Ordinal);
        return (bed.Find(place[..colon]), place[(colon + 1)..]);
    }
}
