using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A counter that ran backwards.</summary>
internal sealed class CounterBackwards : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0704", Severity.Error, "Counter runs backwards",
        "How long a part ran is the difference of two counts; a slip in one of them proves what was never proved.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var repairs = scope.Whole<Repair>().Where(r => r.Machine is not null && r.Counter is not null).ToLookup(r => r.Machine!.Value.Id, StringComparer.Ordinal);
        foreach (var machine in scope.Whole<Machine>())
        {
            var all = machine.Readings.Concat(repairs[machine.Id].Select(r => new Reading(r.Date, r.Counter!.Value, null, false, scope.PlaceOf(r, Words.Of(r.Counter.Value.Unit)))));
            foreach (var counter in all.Where(r => !r.Date.IsUnknown && !scope.IsFuture(r.Date)).GroupBy(r => (r.Counter, r.Count.Unit)))
            {
                foreach (var diagnostic in Backwards([.. counter])) yield return diagnostic;
            }
        }
    }

    private IEnumerable<Diagnostic> Backwards(List<Reading> readings)
    {
        Reading? last = null;
        var resets = readings.Where(r => r.Reset).Select(r => r.Date).ToHashSet();

        // Within a day the order is not known: the highest count before a reset comes first, the reset after it.
        foreach (var reading in readings.OrderBy(r => r.Date).ThenBy(r => r.Reset).ThenBy(r => r.Count.Value))
        {
            if (reading.Reset || last is null)
            {
                last = reading;
                continue;
            }
            if (reading.Count.Value < last.Count.Value && last.Date.SurelyBefore(reading.Date) && !resets.Contains(reading.Date))
                yield return Code.At(reading.Place, $"{reading.Count} on {reading.Date}, but {last.Count} already on {last.Date}", "correct one of them, or add reset: true if the counter was set anew");
            else if (reading.Count.Value > last.Count.Value)
                last = reading;
        }
    }
}
