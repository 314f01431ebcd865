namespace Crossref.Site.Reading.Yaml;

/// <summary>
/// Cuts a file at its <c>---</c> lines. Three dashes in the first column end a document whatever stands around them,
/// so each can be read on its own and one broken document leaves the others whole.
/// </summary>
internal static class DocumentSplitter
{
    /// <summary>Every document's text and how many lines stand before it. The dashes become spaces, so columns stay.</summary>
    internal static IEnumerable<(string Text, int LinesBefore)> Split(string text)
    {
        var (start, startLine, line) = (0, 0, 0);
        for (var at = 0; at <= text.Length; line++)
        {
            if (line > startLine && IsMarker(text, at))
            {
                yield return (Blank(text[start..at]), startLine);
                (start, startLine) = (at, line);
            }
            var end = text.IndexOf('\n', at);
            if (end < 0) break;
            at = end + 1;
        }
        yield return (Blank(text[start..]), startLine);
    }

    private static bool IsMarker(string text, int at) =>
        string.CompareOrdinal(text, at, "---", 0, 3) == 0 &&
        (at + 3 == text.Length || text[at + 3] is ' ' or '\t' or '\n');

    private static string Blank(string document) => IsMarker(document, 0) ? "   " + document[3..] : document;
}
