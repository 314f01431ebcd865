using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>Two mirrors of one hand.</summary>
internal sealed class MirrorSameHand : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0505", Severity.Error, "Mirrors of the same hand",
        "Of two mirrored parts one is left and one is right.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var part in scope.Whole<Part>())
        {
            // Each pair once, at the second of the two.
            if (part.Mirror is { } to && scope.Find<Part>(to) is { } mirror && mirror.Mirror?.Id == part.Id &&
                string.CompareOrdinal(mirror.Id, part.Id) < 0 && part.Hand is not null && part.Hand == mirror.Hand)
                yield return Code.At(to.Place, $"'{part.Id}' and its mirror '{mirror.Id}' are both {part.Hand}", "write hand: left for one and hand: right for the other");
        }
    }
}
