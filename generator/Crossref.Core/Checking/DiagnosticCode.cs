using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>One thing that can be wrong with a content folder, under a code that never changes its meaning.</summary>
/// <param name="Code">Such as <c>CR0101</c>; the first two digits are the group.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Title">What is wrong, in a few words.</param>
/// <param name="Why">Why it matters, in a sentence.</param>
public sealed record DiagnosticCode(string Code, Severity Severity, string Title, string Why)
{
    // Longer than any list of keys; what is longer is somebody's text.
    private const int Longest = 600;

    /// <summary>A diagnostic of this code. Content that is quoted in it cannot break the line or the screen.</summary>
    public Diagnostic At(Place place, string message, string hint) => new(Code, Severity, place, OneLine(message), OneLine(hint));

    private static string OneLine(string text)
    {
        var line = HiddenCharacters.Masked(text.Length <= Longest ? text : text[..Longest] + "…");
        return line.Replace('\n', '?').Replace('\t', '?');
    }
}
