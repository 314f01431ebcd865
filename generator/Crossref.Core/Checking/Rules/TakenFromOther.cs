using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A part said to come out of a bag or an order of another part.</summary>
internal sealed class TakenFromOther : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0705", Severity.Warning, "Taken from another part's bag",
        "Either the wrong bag is counted down or the wrong part is said to have run.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var fitting in scope.Whole<Repair>().SelectMany(r => r.Fitted))
        {
            if (fitting.From is not { } from || (scope.Find<Bag>(from)?.Part ?? scope.Find<Order>(from)?.Part) is not { } held) continue;
            if (held.Id == fitting.Part.Id || scope.Find<Part>(fitting.Part) is null || scope.Find<Part>(held) is not { } part) continue;
            if (part.Contains.Any(k => k.Part.Id == fitting.Part.Id)) continue;
            yield return Code.At(from.Place, $"'{from.Id}' holds {held.Id}, not {fitting.Part.Id}", "name the bag or order it came from, or the part that was fitted");
        }
    }
}
