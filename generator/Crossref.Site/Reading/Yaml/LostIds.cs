using System.Text.RegularExpressions;

namespace Crossref.Site.Reading.Yaml;

/// <summary>
/// Guesses which records stand in text that could not be read, so that a reference to one of them is not reported as
/// a second mistake.
/// </summary>
internal static partial class LostIds
{
    /// <summary>The type and id that each document of the text seems to carry.</summary>
    internal static IEnumerable<(string Type, string Id)> In(string text) =>
        DocumentSplitter.Split(text).Select(d => FirstKey().Match(d.Text)).Where(m => m.Success)
            .Select(m => (m.Groups["type"].Value, m.Groups["id"].Value));

    [GeneratedRegex("""^\s*["']?(?<type>library|family|part|source|claim|repair|machine|unit|bag|order|symptom|question)["']?\s*:\s*["']?(?<id>[A-Za-z0-9-]+)""",
        RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex FirstKey();
}
