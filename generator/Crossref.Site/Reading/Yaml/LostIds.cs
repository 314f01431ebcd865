using System.Text.RegularExpressions;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>
/// Guesses which records stand in text that could not be read, so that a reference to one of them is not reported as
/// a second mistake.
/// </summary>
internal static partial class LostIds
{
    /// <summary>The type and id that each document of the text seems to carry; the id is null where its line makes no sense.</summary>
    internal static IEnumerable<(RecordType Type, string? Id)> In(string text) =>
        DocumentSplitter.Split(text).Select(d => FirstKey().Match(d.Text)).Where(m => m.Success)
            .Select(m => (Words.Parse<RecordType>(m.Groups["type"].Value)!.Value, m.Groups["id"] is { Success: true, Value: var id } ? id : null));

    [GeneratedRegex("""^\s*["']?(?<type>library|family|part|source|claim|repair|machine|unit|bag|order|symptom|question)["']?[ \t]*:([ \t]*(?<quote>["']?)(?<id>[A-Za-z0-9-]+)\k<quote>[ \t]*(#.*)?$)?""",
        RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex FirstKey();
}
