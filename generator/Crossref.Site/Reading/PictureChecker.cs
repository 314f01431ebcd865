using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Reading;

/// <summary>Looks whether the pictures that records and notes show are there, and are pictures.</summary>
internal sealed class PictureChecker(ContentFolder folder, DiagnosticLog log)
{
    private const long Large = 1024 * 1024;
    private const int MostSuggestions = 50;
    private static readonly string[] Endings = [".png", ".jpg", ".jpeg", ".webp", ".gif"];
    private int _suggestions;

    /// <summary>Every picture of a record.</summary>
    internal static IEnumerable<Picture> In(IRecord record) => record switch
    {
        Family f => f.Assemblies.SelectMany(a => a.Positions).SelectMany(p => p.Pictures),
        Part p => p.Pictures,
        Claim c => c.Pictures,
        Repair r => r.Pictures,
        Note n => n.Pictures,
        _ => [],
    };

    internal void Check(Picture picture, bool wordsToo)
    {
        var (file, place) = (picture.File, picture.Place);
        var shown = ScalarChecker.Shown(file);
        if (wordsToo && string.IsNullOrWhiteSpace(picture.Shows))
            log.Add(NoteCodes.PictureSilent, place, $"'{shown}' says nothing to whoever cannot see it", "write what it shows: ![flange against the inner wall](pictures/flange.jpg)");
        if (file.Contains(':', StringComparison.Ordinal) || file.Contains('\\', StringComparison.Ordinal) || file.StartsWith('/') || file.Split('/').Contains(".."))
            log.Add(NoteCodes.PictureAway, place, $"'{shown}' is not a file of this folder", "copy the picture below the content folder and write its path from there, with forward slashes");
        else if (!Endings.Any(e => file.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            log.Add(NoteCodes.PictureFormat, place, $"'{shown}' is not a format that is shown", $"save it as one of {string.Join(", ", Endings.Select(e => e[1..]))}");
        else if (!folder.Files.TryGetValue(file, out var length))
            log.Add(NoteCodes.PictureMissing, place, $"there is no '{shown}'", Suggest.Hint(file, _suggestions++ < MostSuggestions ? folder.Files.Keys : [], "paths begin below the content folder, and capitals count"));
        else if (length > Large)
            log.Add(NoteCodes.PictureLarge, place, FormattableString.Invariant($"'{shown}' has {length / (1024.0 * 1024.0):0.0} MB"), "save it smaller; 1600 pixels across are plenty");
    }
}
