using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>The library's own document and what is mostly words: sources, symptoms, questions.</summary>
internal static class TextMapper
{
    internal static LibraryRecord Library(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Title = f.TextOr("title", id),
        Mains = f.Volts("mains"),
        Inches = f.Text("units") == "in",
        AcceptFrom = f.Word<Basis>("accept-from") ?? Basis.Seated,
        Proving = Proving(f.Map("proving")),
        Confirmed = f.Refs("confirmed"),
    };

    internal static Source Source(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Kind = f.Word<SourceType>("type") ?? SourceType.Person,
        From = Owner.OfFile(f.Place.File),
        Title = f.TextOr("title", id),
        Dated = f.Date("dated"),
        Kept = f.Text("kept"),
        By = f.Text("by"),
        Note = f.Text("note"),
    };

    internal static Symptom Symptom(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Name = f.TextOr("name", id),
        Where = f.Word<Side>("where") ?? Side.Any,
        Suspects = f.Refs("suspects"),
        Checks = f.Texts("checks"),
        Note = f.Text("note"),
    };

    internal static Question Question(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Asks = f.TextOr("asks", ""),
        About = f.Refs("about"),
        Date = f.Date("date"),
        Answer = f.Text("answer"),
        AnsweredBy = f.Ref("answered-by"),
    };

    private static Proving Proving(Fields? f) => f is null ? Core.Records.Proving.Default : new Proving(
        f.Decimal("sheets") ?? Core.Records.Proving.Default.Sheets,
        f.Decimal("hours") ?? Core.Records.Proving.Default.Hours,
        f.Decimal("share-of-life") ?? Core.Records.Proving.Default.ShareOfLife,
        f.Decimal("ran") ?? Core.Records.Proving.Default.Ran);
}
