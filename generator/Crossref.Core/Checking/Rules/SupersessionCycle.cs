namespace Crossref.Core.Checking.Rules;

/// <summary>Parts that supersede each other in a circle, or one that supersedes itself.</summary>
internal sealed class SupersessionCycle : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0503", Severity.Error, "Supersession in a circle",
        "The maker's newest part could not be told.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var parts = scope.Library.Parts;
        foreach (var circle in Cycles.Find(parts.Keys.Order(StringComparer.Ordinal), id => parts.GetValueOrDefault(id)?.SupersededBy is { } next ? [next.Id] : []))
        {
            yield return Code.At(parts[circle[0]].SupersededBy!.Value.Place,
                circle.Count == 1 ? $"'{circle[0]}' is superseded by itself" : $"these parts supersede each other in a circle: {Cycles.Text(circle)}",
                circle.Count == 1 ? "name the part that the maker sends instead; another number of the same part belongs under numbers" : "take out the step that the maker's list does not name");
        }
    }
}
