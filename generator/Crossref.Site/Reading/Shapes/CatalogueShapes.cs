using Crossref.Core.Checking;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using static Crossref.Site.Reading.Shapes.SharedShapes;
using static Crossref.Site.Reading.Shapes.Values;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Records about machines and parts in general: families, parts, sources, symptoms, notes.</summary>
internal static class CatalogueShapes
{
    private static readonly ValueShape Kind = Word(PartKind.All.Select(k => k.Name));

    private static readonly MapShape Listing = new("listing",
    [
        Must("part", Ref(Target.Part), "the part"),
        OnlyIf,
    ], []);

    private static readonly MapShape Position = new("position",
    [
        Must("position", Id, "its id within the assembly"),
        Must("name", Text, "the name pages show"),
        Must("kind", Kind, "what kind of part goes here"),
        May("role", Text, "the job it does, the same word in every family"),
        May("quantity", Amount, "identical places done together"),
        May("listed", List(Map(Listing, "part")), "what the maker's own list names"),
        SharedShapes.Source("where the listing was read"),
        May("locator", Text, "page or item in the source"),
        May("orientation", TextMap, "which way round"),
        May("damages-next", List(LocalPosition), "positions that suffer next when this one fails"),
        May("breaks-when-opened", List(LocalPosition), "positions that break easily while this one is reached"),
        May("diameter", Quantity(Dimension.Length, 0), "of a rotating part, for the repeat distance"),
        Safety, Pictures, Remark,
    ], []);

    private static readonly MapShape Assembly = new("assembly",
    [
        Must("assembly", Id, "its id within the family"),
        Must("name", Text, "the name pages show"),
        May("cool", Wait, "how long to wait before opening"),
        May("cautions", List(Open(Hazard.All.Select(h => h.Id))), "what can hurt somebody here"),
        May("tools", List(Text), "tools wanted on the bench"),
        May("positions", List(Map(Position)), "the places where parts go"),
        Remark,
    ], []);

    internal static MapShape Family { get; } = new("family",
    [
        Must("family", Id, "its id"),
        Must("name", Text, "the name pages show"),
        Must("maker", Text, "who makes it"),
        May("models", List(Map(new MapShape("model",
        [
            Must("model", Text, "the maker's name of the model"),
            May("mains", Volts, "the mains voltage it is built for"),
        ], []), "model")), "its models"),
        May("assemblies", List(Map(Assembly)), "the units that are opened as one"),
        Remark, Retired,
    ], []) { Type = RecordType.Family };

    internal static MapShape Part { get; } = new("part",
    [
        Must("part", Id, "its id"),
        Must("kind", Kind, "decides which sizes matter"),
        Must("name", Text, "the name pages show"),
        May("maker", Text, "who makes it"),
        May("numbers", List(Text), "moulded or printed on it, the current one first"),
        May("earlier-numbers", List(Text), "older numbers of the same part"),
        May("also", List(Map(new MapShape("number of another maker",
        [
            Must("maker", Text, "the other maker"),
            Must("number", Text, "its number"),
            SharedShapes.Source("where that was read"),
        ], []))), "the same part under another maker's number"),
        May("aliases", List(Text), "what people call it"),
        May("superseded-by", Ref(Target.Part), "a different part that the maker sends instead"),
        SharedShapes.Source("where numbers and supersession were read"),
        May("standard", Text, "generic designation, such as 6001-2RS"),
        May("size", Sizes, "sizes by attribute"),
        May("handed", TrueFalse, "true when it matters which way round it goes in"),
        May("hand", Word(["left", "right"]), "left or right, for a part that has a mirror"),
        May("mirror", Ref(Target.Part), "the part of the other hand"),
        May("contains", List(Map(new MapShape("line of a kit",
        [
            Must("part", Ref(Target.Part), "what is in it"),
            May("quantity", Amount, "how many"),
        ], []), "part")), "what a kit holds"),
        May("life", Life, "normal life"),
        May("price", Number(), "in the shop's currency"),
        May("lead-days", Number(), "days from order to door"),
        Safety, Pictures, Remark, Retired,
    ], []) { Type = RecordType.Part };

    internal static MapShape Source { get; } = new("source",
    [
        Must("source", Id, "its id"),
        Must("type", Word<SourceType>(), "what kind of source"),
        Must("title", Text, "its title"),
        May("dated", Date, "when it was written or made"),
        May("kept", Text, "where the paper is kept"),
        May("by", Text, "who said or made it"),
        Remark, Retired,
    ], []) { Type = RecordType.Source };

    internal static MapShape Symptom { get; } = new("symptom",
    [
        Must("symptom", Id, "its id"),
        Must("name", Text, "the name pages show"),
        May("where", Word<Side>(), "which side of the fixing unit it comes from"),
        May("suspects", List(Text), "roles, most likely first"),
        May("checks", List(Text), "what to check first, in order"),
        Remark, Retired,
    ], []) { Type = RecordType.Symptom };

    /// <summary>The front matter of a note; its id is the file's name.</summary>
    internal static MapShape NoteFront { get; } = new("note",
    [
        Must("title", Text, "its title"),
        May("about", List(Ref(Target.Anything)), "ids or position addresses it speaks of"),
        Retired,
    ], []) { Type = RecordType.Note };
}
