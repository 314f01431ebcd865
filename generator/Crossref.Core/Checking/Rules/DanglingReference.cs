namespace Crossref.Core.Checking.Rules;

/// <summary>A reference to a record that does not exist.</summary>
internal sealed class DanglingReference : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0403", Severity.Error, "Reference to nothing",
        "A fact about something that does not exist is lost to every answer.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        foreach (var (reference, _) in scope.References.Where(r => r.Fate == Fate.Missing))
        {
            var known = scope.All.Where(r => reference.MayBe(Targets.Of(r.Type))).Select(r => r.Id);
            yield return Code.At(reference.To.Place, $"there is no {Targets.Name(reference.Target).Split(' ', 2)[1]} '{reference.To.Id}'",
                scope.Hint(reference.To.Id, known, $"write a record for it, or the id of one that exists"));
        }
    }
}
