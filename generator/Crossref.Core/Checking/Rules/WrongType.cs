using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A reference to something of another type than belongs there.</summary>
internal sealed class WrongType : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0404", Severity.Error, "Reference to the wrong type",
        "A part cannot be a machine; what was meant stays unsaid.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var (reference, _) in scope.References.Where(r => r.Fate == Fate.WrongType))
        {
            var id = reference.To.Id;
            var found = scope.Library.Records.TryGetValue(id, out var record) ? Words.Of(record.Type) : scope.Positions.ContainsKey(id) ? "position" : "assembly";
            yield return Code.At(reference.To.Place, $"'{id}' is {(found is "order" or "assembly" ? "an" : "a")} {found}, {Targets.Name(reference.Target)} belongs here",
                $"write {Targets.Written(reference.Target)}");
        }
    }
}
