using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Sizes;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Whether two gears mesh, and whether one replaces the other, laid out size by size.</summary>
/// <param name="Lines">Every size compared.</param>
/// <param name="Answers">The two answers in words.</param>
/// <param name="Cautions">What no size here says.</param>
internal sealed record GearVerdict(IReadOnlyList<WorkingLine> Lines, IReadOnlyList<string> Answers, IReadOnlyList<string> Cautions)
{
    internal static GearVerdict On(GearSizes one, GearSizes other)
    {
        var (mesh, replace) = (GearComparison.Mesh(one, other), GearComparison.Replace(one, other));
        return new GearVerdict(
            [
                .. mesh.Select(s => Line("mesh, ", s, one, other)),
                .. replace.Skip(mesh.Count - 1).Select(s => Line("replace, ", s, one, other)),
            ],
            [
                $"Mesh on parallel shafts: {Tell(mesh)}.",
                $"One in the other's place: {Tell(replace)}.",
            ],
            GearComparison.Overall(replace) == Agreement.Agrees
                ? ["Hub, keyway or flat and profile shift are not compared here: hold the gears against each other and compare a span."]
                : []);
    }

    private static string Tell(IReadOnlyList<ComparedSize> sizes)
    {
        string Names(Agreement agreement) => string.Join(", ", sizes.Where(s => s.Agreement == agreement).Select(s => s.Name));
        return GearComparison.Overall(sizes) switch
        {
            Agreement.Agrees => "yes by these sizes",
            Agreement.Differs => $"no, they differ in {Names(Agreement.Differs)}",
            _ => $"unknown; still to be measured: {Names(Agreement.Unknown)}",
        };
    }

    private static WorkingLine Line(string question, ComparedSize size, GearSizes one, GearSizes other) => new(
        question + size.Name,
        size.Agreement switch { Agreement.Agrees => "agrees", Agreement.Differs => "differs", _ => "unknown" },
        $"{Value(size.Name, one)} and {Value(size.Name, other)}; {size.Rule}");

    private static string Value(string size, GearSizes gear) => size switch
    {
        "module" => Known(gear.Module, 5, "mm"),
        "pressure angle" => Known(gear.PressureAngle, 2, "°"),
        "helix angle" => Known(gear.Helix, 2, "°"),
        "hand" => gear.Hand is { } hand ? GearReader.Word(hand) : "unknown",
        "teeth" => Known(gear.Teeth, 0, ""),
        "face" => Known(gear.Face, 3, "mm"),
        _ => Known(gear.Bore, 3, "mm"),
    };

    private static string Known(Interval? size, int decimals, string unit) => size is { } known ? Figure.Of(known, decimals, unit) : "unknown";
}
