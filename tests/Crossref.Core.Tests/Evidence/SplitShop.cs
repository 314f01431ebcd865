using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Evidence;

/// <summary>A shop of two families with one position each, two parts, and whatever machines and claims a test wants.</summary>
internal static class SplitShop
{
    internal const string Here = "first/head/place";

    private static readonly Place Nowhere = new("x.yaml", 1, 1);

    internal static Library With(IEnumerable<IRecord> records) => new(
        new LibraryRecord { Id = "shop", Place = Nowhere, Title = "Shop" },
        [Family("first"), Family("second"), Part("part-a"), Part("part-b"), new Source { Id = "log", Place = Nowhere, Kind = SourceType.Repair, Title = "Log" }, .. records]);

    internal static Machine Machine(string id, string family = "first", string? model = null, string? serial = null, decimal? mains = null) =>
        new() { Id = id, Place = Nowhere, Family = To(family), Model = model, Serial = serial, Mains = mains };

    /// <summary>A claim about part-a: at the one position, or in place of part-b.</summary>
    internal static Claim Claim(string id, bool yes, bool atPosition, string? machine, PartialDate date = default) => new()
    {
        Id = id, Place = Nowhere, Part = To("part-a"), At = atPosition ? To(Here) : null, Replaces = atPosition ? null : To("part-b"),
        Verdict = yes ? Verdict.Fits : Verdict.DoesNotFit, Basis = Basis.Seated, Source = To("log"),
        Machine = machine is null ? null : To(machine), Date = date,
    };

    /// <summary>What all claims about part-a come to.</summary>
    internal static Fact Judged(Library library, bool atPosition)
    {
        var facts = new Facts(library, new StatementBook(library), null);
        return atPosition ? facts.Direct("part-a", library.Positions[Here]) : facts.Substitution("part-a", "part-b", library.Positions[Here]);
    }

    internal static Ref To(string id) => new(id, Nowhere);

    private static Part Part(string id) => new() { Id = id, Place = Nowhere, Kind = PartKind.Find("bearing")!, Name = id };

    private static Family Family(string id) => new()
    {
        Id = id, Place = Nowhere, Name = $"The {id} family", Maker = "Ostrin", Models = [new("F", null), new("G", null)],
        Assemblies =
        [
            new Assembly
            {
                Id = "head", Family = id, Name = "Head", Place = Nowhere,
                Positions = [new Position { Id = "place", Family = id, Assembly = "head", Place = Nowhere, Name = "Place", Kind = PartKind.Find("bearing")! }],
            },
        ],
    };
}
