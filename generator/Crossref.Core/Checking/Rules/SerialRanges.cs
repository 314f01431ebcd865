using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>The ranges of serials that a library speaks of.</summary>
internal static class SerialRanges
{
    /// <summary>Every condition that has a range closed at both ends, or open at one.</summary>
    internal static IEnumerable<Condition> Of(CheckScope scope) =>
        scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions).SelectMany(p => p.Listed).Select(l => l.OnlyIf)
            .Concat(scope.Whole<Claim>().Select(c => c.OnlyIf))
            .Where(c => c.SerialFrom is not null || c.SerialTo is not null);
}
