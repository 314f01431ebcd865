using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A position for a handed part that does not say which way round.</summary>
internal sealed class ListedWithoutOrientation : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0702", Severity.Error, "Position without an orientation",
        "A handed part goes in one way only; whoever stands at the open machine needs to know which.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var position in scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions).Where(p => p.Orientation.Count == 0))
        {
            if (position.Listed.FirstOrDefault(l => scope.Find<Part>(l.Part) is { Handed: true }) is { } listing)
                yield return Code.At(listing.Part.Place, $"'{listing.Part}' is handed, but '{position.Id}' has no orientation", "add orientation: to the position, such as {flange: inboard}");
        }
    }
}
