namespace Crossref.Core.Checking.Rules;

/// <summary>A kit that contains itself.</summary>
internal sealed class KitCycle : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0506", Severity.Error, "Kit that contains itself",
        "Unpacking it would never end.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope)
    {
        var parts = scope.Library.Parts;
        foreach (var circle in Cycles.Find(parts.Keys.Order(StringComparer.Ordinal), id => parts.GetValueOrDefault(id)?.Contains.Select(k => k.Part.Id) ?? []))
        {
            var line = parts[circle[0]].Contains.First(k => k.Part.Id == circle[1 % circle.Count]);
            yield return Code.At(line.Part.Place, $"this kit contains itself: {Cycles.Text(circle)}", "take out the line that is not in the bag");
        }
    }
}
