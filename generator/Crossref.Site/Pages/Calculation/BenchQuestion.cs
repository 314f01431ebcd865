namespace Crossref.Site.Pages.Calculation;

/// <summary>A question as somebody at the bench asks it.</summary>
/// <param name="Question">The question.</param>
/// <param name="Inputs">What is filled in to answer it: an input's name and what is written there.</param>
internal sealed record BenchQuestion(string Question, params IReadOnlyList<(string Name, string Text)> Inputs)
{
    /// <summary>The state of a calculator's page that is filled in so, as its address carries it.</summary>
    internal string State => string.Join('&', Inputs.Select(i => $"{i.Name}={Uri.EscapeDataString(i.Text)}"));
}
