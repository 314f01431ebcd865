using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A range of serials that cannot be compared.</summary>
internal sealed class SerialsNotComparable : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0607", Severity.Warning, "Serials that cannot be compared",
        "A range compares the number behind the same leading letters; of any other serial it says nothing.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var range in SerialRanges.Of(scope))
        {
            var ends = new[] { range.SerialFrom, range.SerialTo }.OfType<string>().ToList();
            var odd = ends.FirstOrDefault(e => Serial.Parse(e) is null);
            if (odd is not null)
                yield return Code.At(range.Place, $"the serial '{odd}' is not letters followed by a number", "write a serial as it stands on the plate, letters first and then the number");
            else if (ends.Select(e => Serial.Parse(e)!.Value.Letters).Distinct(StringComparer.Ordinal).Count() > 1)
                yield return Code.At(range.Place, $"the serials {ends[0]} and {ends[1]} begin with different letters", "write one range for each series");
        }
    }
}
