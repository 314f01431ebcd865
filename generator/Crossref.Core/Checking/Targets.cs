using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>What may be referred to, in words.</summary>
public static class Targets
{
    /// <summary>Single targets by their word, which is also the scheme of a link in a note.</summary>
    public static IReadOnlyDictionary<string, Target> ByWord { get; } =
        Enum.GetValues<Target>().Where(t => t is not (Target.None or Target.Anything))
            .ToDictionary(t => t.ToString().ToLowerInvariant(), StringComparer.Ordinal);

    /// <summary>The target that a record of a type is.</summary>
    public static Target Of(RecordType type) => (Target)(1 << (int)type);

    /// <summary>"a machine or unit".</summary>
    public static string Name(Target target)
    {
        if (target == Target.Anything) return "a record or position";
        var names = ByWord.Where(t => target.HasFlag(t.Value)).Select(t => t.Key).ToList();
        var list = names.Count == 1 ? names[0] : $"{string.Join(", ", names[..^1])} or {names[^1]}";
        return $"{(list[0] is 'a' or 'o' ? "an" : "a")} {list}";
    }

    /// <summary>What to write for it: "the id of a machine or unit", "a position's address".</summary>
    public static string Written(Target target) => target switch
    {
        Target.Anything => "an id or a position's address",
        Target.Position => "a position's address",
        Target.Assembly => "an assembly's address",
        Target.Family | Target.Position => "a family's id or a position's address",
        _ => "the id of " + Name(target),
    };
}
