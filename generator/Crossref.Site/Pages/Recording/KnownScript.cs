using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Crossref.Core.Records;

namespace Crossref.Site.Pages.Recording;

/// <summary>
/// The script by which a page sees that the library has what was recorded on that PC: the last four characters of the
/// minted ids of this library's findings and questions, by what stands before them.
/// </summary>
internal static partial class KnownScript
{
    internal const string Path = "record-known.js";

    internal static SiteFile Of(Library library)
    {
        var known = library.Claims.Keys.Concat(library.Questions.Keys).Where(id => Minted().IsMatch(id))
            .GroupBy(id => id[..^4], id => id[^4..], StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => KeyValuePair.Create(g.Key, (JsonNode?)string.Join(' ', g.Order(StringComparer.Ordinal))));
        return SiteFile.Text(Path, $"window.crossrefRecordKnown = {new JsonObject(known).ToJsonString()};\n");
    }

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}-[a-z0-9-]+-[a-z0-9]{4}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Minted();
}
