using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>More taken out of a bag than was in it.</summary>
internal sealed class BagBelowZero : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0703", Severity.Error, "Bag below zero",
        "The count of the shelf is what somebody drives to the shop for.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var left = scope.Whole<Bag>().ToDictionary(b => b.Id, b => b.Quantity, StringComparer.Ordinal);
        foreach (var fitting in scope.Whole<Repair>().OrderBy(r => r.Date).ThenBy(r => r.Id, StringComparer.Ordinal).SelectMany(r => r.Fitted))
        {
            if (fitting.From is not { } from || !left.TryGetValue(from.Id, out var before)) continue;

            // Of a position that is not known nobody knows how many it takes.
            if ((fitting.Quantity ?? scope.Position(fitting.Position)?.Quantity) is not { } taken) continue;
            left[from.Id] = before - taken;
            if (before >= 0 && before - taken < 0)
                yield return Code.At(from.Place, $"{taken} taken out of '{from.Id}', but {before} left in it", "correct the quantity here or in the bag, or name the bag it really came from");
        }
    }
}
