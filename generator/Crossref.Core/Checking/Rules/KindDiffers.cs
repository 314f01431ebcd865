using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A part of one kind at a position for another.</summary>
internal sealed class KindDiffers : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0507", Severity.Warning, "Kind differs from the position's",
        "Sizes are compared by kind, so a gear among bearings is compared with nothing.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var listed = scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions)
            .SelectMany(p => p.Listed.Select(l => (l.Part, Position: (Position?)p)));
        var claimed = scope.Standing.Where(c => c.Verdict is not null).Select(c => (c.Part, Position: scope.Position(c.At)));
        var fitted = scope.Whole<Repair>().SelectMany(r => r.Fitted).Select(f => (f.Part, Position: scope.Position(f.Position)));
        foreach (var (to, position) in listed.Concat(claimed).Concat(fitted))
        {
            // A kit holds what belongs here among other things.
            if (position is not null && scope.Find<Part>(to) is { Contains.Count: 0 } part && part.Kind != position.Kind)
                yield return Code.At(to.Place, $"'{part.Id}' is of kind {part.Kind}, '{position.Address}' takes kind {position.Kind}", "correct the kind of the part or of the position");
        }
    }
}
