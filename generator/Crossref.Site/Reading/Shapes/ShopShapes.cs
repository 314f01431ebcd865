using Crossref.Core.Checking;
using Crossref.Core.Records;
using static Crossref.Site.Reading.Shapes.SharedShapes;
using static Crossref.Site.Reading.Shapes.Values;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Records about one shop: its library, machines, units, bags, orders, repairs, claims and questions.</summary>
internal static class ShopShapes
{
    private static readonly ValueShape Basis =
        Word(Core.Records.Words.All<Basis>().Where(w => w != "proven")) with { Reached = ["proven"] };

    internal static MapShape Library { get; } = new("library",
    [
        Must("library", Id, "this copy's owner; every id minted here carries it"),
        Must("title", Text, "the name pages show"),
        May("mains", Volts, "mains voltage of the shop"),
        May("units", Word(["mm", "in"]), "what pages show lengths in"),
        May("accept-from", Word<Basis>(), "lowest standing that counts as an answer"),
        May("proving", Map(new MapShape("proving",
        [
            May("sheets", Counted, "sheets each of two runs needs"),
            May("hours", Number(), "hours each of two runs needs"),
            May("share-of-life", Number(0, 1), "share of the part's life one run needs"),
            May("ran", Counted, "sheets below which a run counts as seated"),
        ], [])), "what a run must reach"),
        May("confirmed", List(Ref(Target.Source)), "sources of other libraries that this one has checked"),
        Retired,
    ], []) { Type = RecordType.Library };

    internal static MapShape Claim { get; } = new("claim",
    [
        Must("claim", Id, "its id"),
        Must("part", Ref(Target.Part), "what was tried"),
        May("at", Ref(Target.Position), "where it was tried"),
        May("replaces", Ref(Target.Part), "the part it stands in for"),
        May("where", Ref(Target.Family | Target.Position, "anywhere"), "to which the comparison is limited"),
        May("both-ways", TrueFalse, "true when the comparison holds in reverse too"),
        May("verdict", Word<Verdict>(), "what it says"),
        May("basis", Basis, "what it rests on"),
        .. Counts, OnlyIf,
        May("change", Text, "what was done to make it fit"),
        May("orientation", TextMap, "which way round it was fitted"),
        May("machine", Ref(Target.Machine), "where it was tried"),
        Neighbours,
        May("source", Ref(Target.Source | Target.Repair), "a source record, or a repair"),
        May("locator", Text, "page, item or photo in the source"),
        By, Day,
        May("withdraws", Ref(Target.Claim), "an earlier claim about the same fact that this one takes back"),
        Pictures, Remark, Retired,
    ],
    [
        Demand.ExactlyOne("at", "replaces"), OneCountAtMost,
        Demand.AnyOf("verdict") with { Unless = "withdraws" },
        Demand.AnyOf("basis") with { When = "verdict" },
        Demand.AnyOf("verdict") with { When = "basis" },
        Demand.AnyOf([.. CountKeys]) with { When = "basis", Is = "ran" },
        Demand.AnyOf("change") with { When = "verdict", Is = "fits-with-change" },
        Demand.AnyOf("replaces") with { When = "where" },
        Demand.AnyOf("replaces") with { When = "both-ways" },
    ]) { Type = RecordType.Claim };

    internal static MapShape Machine { get; } = new("machine",
    [
        Must("machine", Id, "its id"),
        May("name", Text, "what the shop calls it"),
        Must("family", Ref(Target.Family), "its family"),
        May("model", Text, "its model"),
        May("serial", Text, "its serial"),
        May("mains", Volts, "its mains voltage, when it differs from its model's"),
        May("readings", List(Map(new MapShape("reading",
        [
            Must("date", Date, "when it was read"),
            .. Counts,
            May("counter", Text, "which counter; left out for the machine's total"),
            May("reset", TrueFalse, "true when the counter was set anew to this value"),
        ], [Demand.ExactlyOne([.. CountKeys])]))), "counter readings"),
        Remark, Retired,
    ], []) { Type = RecordType.Machine };

    internal static MapShape Bag { get; } = new("bag",
    [
        Must("bag", Id, "its id"),
        Must("part", Ref(Target.Part), "what is in it"),
        May("quantity", Counted, "how many were bagged; repairs subtract"),
        Must("grade", Word<Grade>(), "how good they are"),
        May("bin", Text, "where it hangs"),
        May("from", Ref(Target.Machine | Target.Unit | Target.Repair | Target.Source), "where it came from"),
        May("position", Ref(Target.Position), "the position it came out of"),
        .. Counts,
        May("number", Text, "the number moulded on it"),
        Day,
        May("tested-by", Text, "who tested it"),
        May("defect", Text, "what is wrong with it"),
        Remark, Retired,
    ], [OneCountAtMost]) { Type = RecordType.Bag };

    internal static MapShape Unit { get; } = new("unit",
    [
        Must("unit", Id, "its id"),
        Must("family", Ref(Target.Family), "its family"),
        Must("assembly", LocalAssembly, "which assembly it is"),
        May("in", Ref(Target.Machine, "rack"), "the machine it sits in"),
        May("missing", List(LocalPosition), "positions that are empty"),
        May("back-in-service", TrueFalse, "true when it must run again"),
        May("bin", Text, "where it stands"),
        Remark, Retired,
    ], []) { Type = RecordType.Unit };

    internal static MapShape Order { get; } = new("order",
    [
        Must("order", Id, "its id"),
        Must("part", Ref(Target.Part), "what was ordered"),
        May("quantity", Amount, "how many"),
        May("date", Date, "when it was ordered"),
        May("expected", Date, "when it should come"),
        May("for", Ref(Target.Unit | Target.Machine), "what it is for; left out for the shelf"),
        May("received", Date, "when it came"),
        Remark, Retired,
    ], []) { Type = RecordType.Order };

    internal static MapShape Repair { get; } = new("repair",
    [
        Must("repair", Id, "its id"),
        May("machine", Ref(Target.Machine), "the machine"),
        May("unit", Ref(Target.Unit), "the unit, when it was worked on at the bench"),
        Day, By, .. Counts,
        May("symptom", Ref(Target.Symptom), "what led to it"),
        May("assembly", LocalAssembly, "the assembly that was opened"),
        May("found", List(Map(new MapShape("finding",
        [
            Must("position", LocalPosition, "where"),
            Must("condition", Text, "in what condition"),
            Remark,
        ], []))), "what was found"),
        May("removed", List(Map(new MapShape("removal",
        [
            Must("position", LocalPosition, "where"),
            Must("part", Ref(Target.Part), "what came out"),
            May("to", Ref(Target.Bag | Target.Unit, "scrap"), "where it went"),
            May("condition", Text, "in what condition"),
            May("quantity", Amount, "how many"),
        ], []))), "what was taken out"),
        May("fitted", List(Map(new MapShape("fitting",
        [
            Must("position", LocalPosition, "where"),
            Must("part", Ref(Target.Part), "what went in"),
            May("from", Ref(Target.Bag | Target.Unit | Target.Order, "new"), "where it came from"),
            May("orientation", TextMap, "which way round"),
            May("change", Text, "what was done to make it fit"),
            May("quantity", Amount, "how many"),
        ], []))), "what was put in"),
        May("swapped", Map(new MapShape("swap",
        [
            Must("assembly", LocalAssembly, "the assembly"),
            May("out", Ref(Target.Unit), "the unit that came out"),
            May("in", Ref(Target.Unit), "the unit that went in"),
        ], [])), "a whole unit changed"),
        May("outcome", Word<Outcome>(), "how it ended"),
        Neighbours, Pictures, Remark, Retired,
    ], [Demand.ExactlyOne("machine", "unit"), OneCountAtMost]) { Type = RecordType.Repair };

    internal static MapShape Question { get; } = new("question",
    [
        Must("question", Id, "its id"),
        Must("asks", Text, "the question"),
        May("about", List(Ref(Target.Anything)), "ids or position addresses"),
        Day,
        May("answer", Text, "the answer"),
        May("answered-by", Ref(Target.Claim | Target.Source), "the claim or source that answers it"),
        Retired,
    ], []) { Type = RecordType.Question };
}
