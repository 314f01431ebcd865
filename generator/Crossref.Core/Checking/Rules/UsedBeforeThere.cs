using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A part fitted before it was in the house.</summary>
internal sealed class UsedBeforeThere : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0803", Severity.Warning, "Fitted before it was there",
        "The bag, the order or the day of the repair is another than is written.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var repair in scope.Whole<Repair>())
        {
            foreach (var from in repair.Fitted.Select(f => f.From).OfType<Ref>())
            {
                if (scope.Find<Bag>(from) is { } bag && !scope.IsFuture(bag.Date) && repair.Date.SurelyBefore(bag.Date))
                    yield return Code.At(from.Place, $"fitted {repair.Date}, but '{bag.Id}' was bagged {bag.Date}", "correct one of the dates, or name the bag it came from");
                else if (scope.Find<Order>(from) is { Received: null } open)
                    yield return Code.At(from.Place, $"fitted from '{open.Id}', which has not come", "add received: to the order");
                else if (scope.Find<Order>(from) is { Received: { } received } order && !scope.IsFuture(received) && repair.Date.SurelyBefore(received))
                    yield return Code.At(from.Place, $"fitted {repair.Date}, but '{order.Id}' came {received}", "correct one of the dates, or name where it came from");
            }
        }
    }
}
