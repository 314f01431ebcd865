using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>Something that happened after today.</summary>
internal sealed class FutureDate : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0801", Severity.Warning, "Date in the future",
        "The latest finding leads; one that has not happened yet would lead for ever.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var (date, place) in scope.Whole<IRecord>().SelectMany(r => Dates(scope, r)))
        {
            if (scope.IsFuture(date))
                yield return Code.At(place, FormattableString.Invariant($"{date} is after today, {scope.Today:yyyy-MM-dd}"), "correct the date, or the clock of this PC");
        }
    }

    private static IEnumerable<(PartialDate Date, Place Place)> Dates(CheckScope scope, IRecord record) => record switch
    {
        Claim r => [(r.Date, scope.PlaceOf(r, "date"))],
        Repair r => [(r.Date, scope.PlaceOf(r, "date"))],
        Bag r => [(r.Date, scope.PlaceOf(r, "date"))],
        Question r => [(r.Date, scope.PlaceOf(r, "date"))],
        Source r => [(r.Dated, scope.PlaceOf(r, "dated"))],
        Order r => [(r.Date, scope.PlaceOf(r, "date")), (r.Received ?? PartialDate.Unknown, scope.PlaceOf(r, "received"))],
        Machine r => r.Readings.Select(x => (x.Date, x.Place)),
        _ => [],
    };
}
