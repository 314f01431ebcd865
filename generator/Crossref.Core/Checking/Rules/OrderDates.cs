using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>An order that comes before it was sent.</summary>
internal sealed class OrderDates : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0802", Severity.Error, "Received before ordered",
        "How long a part takes to come is reckoned from these dates.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var order in scope.Whole<Order>())
        {
            if (order.Expected.SurelyBefore(order.Date))
                yield return Code.At(scope.PlaceOf(order, "expected"), $"expected {order.Expected}, but ordered {order.Date}", "correct one of the dates");
            if (order.Received is { } received && received.SurelyBefore(order.Date))
                yield return Code.At(scope.PlaceOf(order, "received"), $"received {received}, but ordered {order.Date}", "correct one of the dates");
        }
    }
}
