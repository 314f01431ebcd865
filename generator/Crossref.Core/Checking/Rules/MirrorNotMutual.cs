using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A part whose mirror does not name it back.</summary>
internal sealed class MirrorNotMutual : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0504", Severity.Error, "Mirror that does not mirror back",
        "Left and right are two parts that name each other; one that does not sends somebody to the wrong side.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var part in scope.Whole<Part>())
        {
            if (part.Mirror is not { } to || scope.Find<Part>(to) is not { } mirror) continue;
            if (mirror == part)
                yield return Code.At(to.Place, $"'{part.Id}' is its own mirror", "name the part of the other hand");
            else if (mirror.Mirror?.Id != part.Id && !scope.IsDead(mirror.Mirror) && !IsAtFault(scope, mirror))
                yield return Code.At(to.Place, $"'{mirror.Id}' does not name '{part.Id}' as its mirror", $"add mirror: {part.Id} there, or take this one out");
        }
    }

    // It names a part that knows of no mirror at all, or itself. That is reported there, and the same slip once is enough.
    private static bool IsAtFault(CheckScope scope, Part part) =>
        part.Mirror is { } to && scope.Find<Part>(to) is { } other && (other.Mirror is null || other == part);
}
