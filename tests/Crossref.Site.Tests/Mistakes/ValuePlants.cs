using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>Mistakes with values: form, word, id, number, quantity, date; and what YAML can do but a record may not.</summary>
internal static class ValuePlants
{
    internal static IEnumerable<Plant> In(Bed bed, ValueSpot spot)
    {
        foreach (var bad in ValueSamples.Bad(spot.Shape))
        {
            // In place of a list, one of its own entries: another value may be wrong in other ways as well.
            var lone = spot.Value.Rows is [{ Raw: { } first }, ..] && bad.Mistake == "single value for a list" ? bad with { Raw = first } : bad;
            if (spot.Shape.Kind == ValueKind.Id)
            {
                // A bad id is written wherever the record is named, as people do who do not know that it is one.
                // With a slash in it the name of a place within a family reads like an address of something else.
                var isLocal = spot.Value != spot.Document.Root.Keys![0].Value;
                if (isLocal && bad.Raw == "a/b") continue;
                yield return bad.Code == ShapeCodes.DeviceName || bad.Code == ShapeCodes.BadId ? BadId(bed, spot, bad) : Plant(spot, bad.Mistake, bad.Raw, bad.Code!);
                continue;
            }
            yield return Plant(spot, bad.Mistake, lone.Raw, bad.Code!);
        }
        foreach (var plant in References(bed, spot).Concat(Pictures(spot)).Concat(Future(spot))) yield return plant;
    }

    private static IEnumerable<Plant> References(Bed bed, ValueSpot spot)
    {
        switch (spot.Shape.Kind)
        {
            case ValueKind.Reference:
                var target = spot.Shape.Target;
                foreach (var (raw, code) in Missing(target)) yield return Plant(spot, "reference to nothing", raw, code);
                foreach (var raw in WrongTypes(bed, target)) yield return Plant(spot, "reference to the wrong type", raw, Code("CR0404"));
                break;
            case ValueKind.LocalPosition:
                foreach (var raw in (string[])["xyzzy-quux", "fold-head/xyzzy-quux", "xyzzy-quux/roller-2-gear", "ostrin-f2/fold-head/xyzzy-quux"])
                    yield return Plant(spot, "reference to nothing", raw, Code("CR0405"));
                break;
            case ValueKind.LocalAssembly:
                foreach (var raw in (string[])["xyzzy-quux", "ostrin-f2/xyzzy-quux"]) yield return Plant(spot, "reference to nothing", raw, Code("CR0406"));
                break;
        }
    }

    private static IEnumerable<Plant> Pictures(ValueSpot spot) => (spot.Owner.Name, spot.Name) != ("picture", "file") ? [] :
    [
        .. ((string[])["../flange.jpg", "/flange.jpg", "https://x/flange.jpg", "pictures\\flange.jpg"]).Select(raw => Plant(spot, "picture from elsewhere", raw, NoteCodes.PictureAway)),
        Plant(spot, "picture missing", "pictures/flanje.jpg", NoteCodes.PictureMissing),
        Plant(spot, "format of a picture", "pictures/flange.svg", NoteCodes.PictureFormat),
    ];

    // What is expected may well lie ahead.
    private static IEnumerable<Plant> Future(ValueSpot spot) => spot.Shape.Kind != ValueKind.Date || spot.Name == "expected" ? [] :
        [Plant(spot, "future date", "2026-06-02", Code("CR0801")), Plant(spot, "future date", "2027", Code("CR0801"))];

    private static IEnumerable<(string Raw, DiagnosticCode Code)> Missing(Target target)
    {
        const string Address = "ostrin-f2/fold-head/xyzzy-quux";
        if (target == Target.Position) return [(Address, Code("CR0405")), ("xyzzy-quux", Code("CR0405"))];
        var id = ("xyzzy-quux", Code("CR0403"));
        return (target & Target.Position) == 0 ? [id]
            : (target & Target.Assembly) == 0 ? [id, (Address, Code("CR0405"))]
            : [id, (Address, Code("CR0405")), ("ostrin-f2/xyzzy-quux", Code("CR0406"))];
    }

    private static IEnumerable<string> WrongTypes(Bed bed, Target target) =>
        bed.Documents.Where(d => (target & Targets.Of(d.Shape.Type!.Value)) == 0 && d.Shape.Type != Core.Records.RecordType.Note)
            .DistinctBy(d => d.Shape.Type).Select(d => d.Id)
            .Concat((target & Target.Position) == 0 ? ["ostrin-f2/fold-head/roller-2-gear"] : [])
            .Concat((target & Target.Assembly) == 0 ? ["ostrin-f2/fold-head"] : []);

    /// <summary>What YAML allows, or trips over.</summary>
    internal static IEnumerable<Plant> Yaml(ValueSpot spot)
    {
        if (spot.Value.Raw is not { } raw)
        {
            yield return Before(spot, "anchor", "&here", YamlCodes.Alias);
            yield return Before(spot, "tag", "!mine", YamlCodes.Tag);
        }
        else
        {
            yield return Plant(spot, "anchor", $"&here {raw}", YamlCodes.Alias);
            yield return Plant(spot, "tag", $"!!str {raw}", YamlCodes.Tag);
            yield return Plant(spot, "tag", $"!mine {raw}", YamlCodes.Tag);
        }
        yield return Plant(spot, "alias", "*there", YamlCodes.Alias);
        if (!int.TryParse(spot.Path.Split('/')[^1], out _)) yield return Plant(spot, "broken YAML", "one: two", YamlCodes.Broken);
        foreach (var broken in (string[])["\"not closed", "[not, closed", "{not: closed", "@first", "`first", "%first", "] first"])
            yield return Plant(spot, "broken YAML", broken, YamlCodes.Broken);
    }

    private static Plant BadId(Bed bed, ValueSpot spot, Sample bad) =>
        new(bad.Mistake, $"{spot.Path}: {bad.Raw}", () => bed.Rename(spot.Value.Raw!, bad.Raw), () => new(bad.Code!.Code, spot.Document.File, spot.Value.Line));

    private static Plant Before(ValueSpot spot, string mistake, string text, DiagnosticCode code) => new(mistake, $"{spot.Path}: {text}", () =>
    {
        spot.Value.Before = text;
        return () => spot.Value.Before = "";
    }, () => new(code.Code, spot.Document.File, spot.Value.Line));

    private static Plant Plant(ValueSpot spot, string mistake, string raw, DiagnosticCode code) => new(mistake, $"{spot.Path}: {raw}", () =>
    {
        var value = spot.Value;
        var (wasRaw, wasKeys, wasRows) = (value.Raw, value.Keys, value.Rows);
        (value.Raw, value.Keys, value.Rows) = (raw, null, null);
        return () => (value.Raw, value.Keys, value.Rows) = (wasRaw, wasKeys, wasRows);
    }, () => new(code.Code, spot.Document.File, spot.Value.Line));

    private static DiagnosticCode Code(string code) => DiagnosticCodes.All.Single(c => c.Code == code);
}
