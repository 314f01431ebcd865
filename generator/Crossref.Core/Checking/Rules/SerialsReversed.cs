using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A range of serials that ends before it begins.</summary>
internal sealed class SerialsReversed : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0606", Severity.Error, "Serials in the wrong order",
        "No machine lies in a range that ends before it begins.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var range in SerialRanges.Of(scope))
        {
            if (range is { SerialFrom: { } from, SerialTo: { } to } && Serial.Parse(from) is { } first && Serial.Parse(to) is { } last &&
                first.Letters == last.Letters && first.Number > last.Number)
                yield return Code.At(range.Place, $"serial-from {from} comes after serial-to {to}", $"write serial-from: {to} and serial-to: {from}, if the two were exchanged");
        }
    }
}
