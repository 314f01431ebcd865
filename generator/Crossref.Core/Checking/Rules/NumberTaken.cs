using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>One number of a maker on two parts.</summary>
internal sealed class NumberTaken : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0501", Severity.Error, "Number of two parts",
        "A maker gives a number to one part; whoever looks it up must find that one.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var first = new Dictionary<(string Maker, string Number), Part>();
        foreach (var part in scope.Whole<Part>().Where(p => p.Maker is not null))
        {
            foreach (var number in part.Numbers.Concat(part.EarlierNumbers))
            {
                var key = (part.Maker!.Trim().ToUpperInvariant(), NumberForm.Of(number.Id));
                if (key.Item2.Length == 0 || first.TryAdd(key, part) || first[key] == part) continue;
                yield return Code.At(number.Place, $"{part.Maker} {number.Id} is already a number of '{first[key].Id}' in {first[key].Place}",
                    "give the number to one of them; a part that the maker sends instead is superseded-by");
            }
        }
    }
}
