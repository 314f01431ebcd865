using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A part said to be the same under another maker's number, which is a part of its own.</summary>
internal sealed class AlsoHasRecord : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0502", Severity.Warning, "One part in two records",
        "What is known of one record is not known of the other, although both are said to be the same part.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var owners = scope.Whole<Part>().Where(p => p.Maker is not null)
            .SelectMany(p => p.Numbers.Concat(p.EarlierNumbers).Select(n => (Key: (Maker(p.Maker!), NumberForm.Of(n.Id)), Part: p)))
            .GroupBy(o => o.Key).ToDictionary(g => g.Key, g => g.First().Part);
        foreach (var part in scope.Whole<Part>())
        {
            foreach (var also in part.Also)
            {
                if (owners.TryGetValue((Maker(also.Maker), NumberForm.Of(also.Number.Id)), out var owner) && owner != part)
                    yield return Code.At(also.Number.Place, $"{also.Maker} {also.Number.Id} is also the part '{owner.Id}'", "keep one record for both, or leave this line out and claim what replaces what");
            }
        }
    }

    private static string Maker(string name) => name.Trim().ToUpperInvariant();
}
