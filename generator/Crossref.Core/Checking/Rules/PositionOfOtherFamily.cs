using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A position of one family named together with a machine, unit or position of another.</summary>
internal sealed class PositionOfOtherFamily : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0410", Severity.Error, "Position of another family",
        "The machine does not have that position, so one of the two is a slip.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var pairs = scope.Whole<Claim>().Select(c => (c.At, Family: FamilyOf(scope, c.Machine)))
            .Concat(scope.Whole<Bag>().Select(b => (At: b.Position, Family: FamilyOf(scope, b.From))))
            .Concat(scope.Whole<Repair>().SelectMany(r => PositionsOf(r).Select(p => (At: (Ref?)p, Family: FamilyOf(scope, r.Machine ?? r.Unit)))))
            .Concat(scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions)
                .SelectMany(p => p.DamagesNext.Concat(p.BreaksWhenOpened).Select(next => (At: (Ref?)next, Family: (string?)p.Family))));
        foreach (var (at, family) in pairs)
        {
            if (family is not null && scope.Position(at) is { } position && position.Family != family)
                yield return Code.At(at!.Value.Place, $"'{position.Address}' is not a position of {family}", $"write a position of {family}, or name a machine of {position.Family}");
        }
    }

    private static IEnumerable<Ref> PositionsOf(Repair repair) =>
        [.. repair.Found.Select(f => f.Position), .. repair.Removed.Select(r => r.Position), .. repair.Fitted.Select(f => f.Position)];

    private static string? FamilyOf(CheckScope scope, Ref? owner)
    {
        var family = scope.Find<Machine>(owner)?.Family ?? scope.Find<Unit>(owner)?.Family;
        return scope.Find<Family>(family)?.Id;
    }
}
