using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>Two records with one id.</summary>
internal sealed class RepeatedId : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0401", Severity.Error, "Id used twice",
        "An id names one thing in the whole library, whatever its type; with two, every reference is a guess.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var record in scope.Library.Repeated)
        {
            var first = scope.Library.Records[record.Id];
            yield return Code.At(record.Place, $"the id '{record.Id}' is already that of the {Words.Of(first.Type)} in {first.Place}", "choose another id for one of them, and change what refers to it");
        }
    }
}
