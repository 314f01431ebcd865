using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A suspect that no position can be.</summary>
internal sealed class UnknownRole : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0408", Severity.Warning, "Suspect without a position",
        "A suspect is found on a machine through the role of its positions; this one is found nowhere.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        // With a family unread, or half read, nobody knows every role.
        if (!scope.HasAll<Family>()) yield break;
        var roles = scope.Positions.Values.Select(p => p.Role).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var suspect in scope.Whole<Records.Symptom>().SelectMany(s => s.Suspects).Where(s => !roles.Contains(s.Id)))
        {
            yield return Code.At(suspect.Place, $"no position has the role '{suspect.Id}'", scope.Hint(suspect.Id, roles, "write the role of a position, or give the position this role"));
        }
    }
}
