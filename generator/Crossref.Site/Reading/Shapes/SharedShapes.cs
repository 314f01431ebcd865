using Crossref.Core.Checking;
using static Crossref.Site.Reading.Shapes.Values;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Keys and maps that several records share.</summary>
internal static class SharedShapes
{
    internal static KeyShape Remark { get; } = May("note", Text, "a remark");
    internal static KeyShape Retired { get; } = May("retired", TrueFalse, "true keeps the record but leaves it out of answers");
    internal static KeyShape Safety { get; } = May("safety", TrueFalse, "true puts it under the safety rules");
    internal static KeyShape Day { get; } = May("date", Date, "when");
    internal static KeyShape By { get; } = May("by", Text, "who");
    internal static KeyShape Neighbours { get; } =
        May("neighbours", Word(["undamaged", "damaged"]), "how the neighbours looked at a recheck; left out when nobody looked");

    internal static IReadOnlyList<string> CountKeys { get; } = Core.Records.Words.All<Core.Records.CountUnit>();

    /// <summary>A counter or a run, under the name of what it counts.</summary>
    internal static IReadOnlyList<KeyShape> Counts { get; } = [.. CountKeys.Select(k => May(k, Counted, $"the count in {k}"))];

    internal static Demand OneCountAtMost { get; } = Demand.AtMostOne([.. CountKeys]);

    internal static KeyShape Pictures { get; } = May("pictures", List(Map(new MapShape("picture",
    [
        Must("file", Text, "path below the content folder"),
        Must("shows", Text, "what it shows, in words"),
    ], []))), "pictures with what they show");

    internal static KeyShape OnlyIf { get; } = May("only-if", Map(new MapShape("condition",
    [
        May("models", List(Text), "models of the family, any of them"),
        May("serial-from", Text, "first serial"),
        May("serial-to", Text, "last serial"),
        May("mains", Volts, "mains voltage"),
    ], [])), "the machines it speaks of");

    internal static KeyShape Source(string says) => May("source", Ref(Target.Source), says);
}
