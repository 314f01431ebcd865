using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>The one list of what refers to what.</summary>
internal static class References
{
    /// <summary>Every reference in a record that holds something.</summary>
    internal static IEnumerable<Reference> Of(IRecord record)
    {
        IEnumerable<(Ref? To, Target Target)> all = record switch
        {
            LibraryRecord r => Each(r.Confirmed, Target.Source),
            Family r => r.Assemblies.SelectMany(a => a.Positions).SelectMany(Of),
            Part r =>
            [
                .. r.Also.Select(a => (a.Source, Target.Source)), (r.SupersededBy, Target.Part), (r.Source, Target.Source),
                (r.Mirror, Target.Part), .. r.Contains.Select(k => ((Ref?)k.Part, Target.Part)),
            ],
            Claim r =>
            [
                (r.Part, Target.Part), (r.At, Target.Position), (r.Replaces, Target.Part),
                (r.Where, Target.Family | Target.Position), (r.Machine, Target.Machine),
                (r.Source, Target.Source | Target.Repair), (r.Withdraws, Target.Claim),
            ],
            Machine r => [(r.Family, Target.Family)],
            Bag r =>
            [
                (r.Part, Target.Part), (r.From, Target.Machine | Target.Unit | Target.Repair | Target.Source),
                (r.Position, Target.Position),
            ],
            Unit r => [(r.Family, Target.Family), (r.Assembly, Target.Assembly), (r.Machine, Target.Machine), .. Each(r.Missing, Target.Position)],
            Order r => [(r.Part, Target.Part), (r.For, Target.Unit | Target.Machine)],
            Repair r => Of(r),
            Question r => [.. Each(r.About, Target.Anything), (r.AnsweredBy, Target.Claim | Target.Source)],
            Note r => [.. Each(r.About, Target.Anything), .. r.Links.Select(Link)],
            _ => [],
        };
        return all.Where(r => r.To is { Id.Length: > 0 }).Select(r => new Reference(record, r.To!.Value, r.Target));
    }

    private static IEnumerable<(Ref? To, Target Target)> Of(Position position) =>
    [
        .. position.Listed.Select(l => ((Ref?)l.Part, Target.Part)), (position.Source, Target.Source),
        .. Each(position.DamagesNext, Target.Position), .. Each(position.BreaksWhenOpened, Target.Position),
    ];

    private static IEnumerable<(Ref? To, Target Target)> Of(Repair repair) =>
    [
        (repair.Machine, Target.Machine), (repair.Unit, Target.Unit), (repair.Symptom, Target.Symptom),
        // An assembly that a bench repair takes over from its unit is looked up there.
        (repair.Assembly?.Place == repair.Unit?.Place ? null : repair.Assembly, Target.Assembly),
        .. repair.Found.Select(f => ((Ref?)f.Position, Target.Position)),
        .. repair.Removed.SelectMany(r => Three(r.Position, r.Part, r.To, Target.Bag | Target.Unit)),
        .. repair.Fitted.SelectMany(f => Three(f.Position, f.Part, f.From, Target.Bag | Target.Unit | Target.Order)),
        (repair.Swapped?.Assembly, Target.Assembly), (repair.Swapped?.Out, Target.Unit), (repair.Swapped?.In, Target.Unit),
    ];

    private static IEnumerable<(Ref? To, Target Target)> Three(Ref position, Ref part, Ref? other, Target target) =>
        [(position, Target.Position), (part, Target.Part), (other, target)];

    private static (Ref? To, Target Target) Link(Ref link)
    {
        var colon = link.Id.IndexOf(':', StringComparison.Ordinal);
        return (link with { Id = link.Id[(colon + 1)..] }, Targets.ByWord.GetValueOrDefault(link.Id[..Math.Max(colon, 0)], Target.Anything));
    }

    private static IEnumerable<(Ref? To, Target Target)> Each(IEnumerable<Ref> refs, Target target) =>
        refs.Select(r => ((Ref?)r, target));
}
