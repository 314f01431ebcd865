using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>Claims.</summary>
internal static class ClaimMapper
{
    internal static Claim Map(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Part = f.RequiredRef("part"),
        At = f.Ref("at"),
        Replaces = f.Ref("replaces"),
        Where = f.Ref("where", "anywhere"),
        BothWays = f.Yes("both-ways"),
        Verdict = f.Word<Verdict>("verdict"),
        Basis = f.Word<Basis>("basis"),
        Run = f.Count(),
        OnlyIf = f.OnlyIf,
        Change = f.Text("change"),
        Orientation = f.TextMap("orientation"),
        Machine = f.Ref("machine"),
        NeighboursDamaged = f.NeighboursDamaged,
        Source = f.Ref("source"),
        Locator = f.Text("locator"),
        By = f.Text("by"),
        Date = f.Date("date"),
        Withdraws = f.Ref("withdraws"),
        Pictures = f.Pictures,
        Note = f.Text("note"),
    };
}
