using Crossref.Core.Checking;

namespace Crossref.Site.Reading.Shapes;

/// <summary>What may be referred to, in words.</summary>
internal static class Targets
{
    /// <summary>"the id of a machine or unit", "a position's address".</summary>
    internal static string Name(Target target) => target switch
    {
        Target.Anything => "an id or a position's address",
        Target.Position => "a position's address",
        Target.Assembly => "an assembly's address",
        Target.Family | Target.Position => "a family or a position's address",
        _ => "the id of a " + string.Join(" or ", Enum.GetValues<Target>()
            .Where(t => t is not (Target.None or Target.Anything) && target.HasFlag(t))
            .Select(t => t.ToString().ToLowerInvariant())),
    };
}
