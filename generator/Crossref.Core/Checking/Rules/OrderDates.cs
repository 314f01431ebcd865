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
        foreach (var order in scope.Whole<Order>().Where(o => !scope.IsFuture(o.Date)))
        {
            var late = order.Received is { } came && came.SurelyBefore(order.Date);
            if (order.Expected.SurelyBefore(order.Date) && late)
                yield return Code.At(scope.PlaceOf(order, "date"), $"ordered {order.Date}, but expected {order.Expected} and received {order.Received}", "correct the date of the order, or both others");
            else if (order.Expected.SurelyBefore(order.Date))
                yield return Code.At(scope.PlaceOf(order, "expected"), $"expected {order.Expected}, but ordered {order.Date}", "correct one of the dates");
            else if (late)
                yield return Code.At(scope.PlaceOf(order, "received"), $"received {order.Received}, but ordered {order.Date}", "correct one of the dates");
        }
    }
}
