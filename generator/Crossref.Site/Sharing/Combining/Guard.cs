using System.Text.RegularExpressions;
using Crossref.Site.Sharing.Histories;

namespace Crossref.Site.Sharing.Combining;

/// <summary>
/// What another library may not change here by itself: what decides whether something is documented or under the safety
/// rules, and what takes such a thing out.
/// </summary>
internal static partial class Guard
{
    /// <summary>The keys of a record of ours at which another library's text is only offered.</summary>
    internal static Func<string, bool> Of(RecordHistory ours, RecordHistory theirs) => key =>
    {
        if (!Keys.IsOwn(key)) return false;
        var (here, there) = (ours.Shown.Values.GetValueOrDefault(key), theirs.Shown.Values.GetValueOrDefault(key));
        if (here == there) return false;
        var name = Keys.Last(key);
        // Keys below one another: what is taken out with everything below it is seen at the uppermost.
        if (name[0] is '>' or '-') return there is null && here is not null || Documents(name[1..], here);
        return Documents(name[1..], here) || Written().IsMatch(here ?? "") || Written().IsMatch(there ?? "");
    };

    // A kind that we do not have yet comes with its position; one that we have decides what is asked of the part.
    private static bool Documents(string name, string? here) =>
        name is "listed" or "source" or "locator" or "superseded-by" or "also" || name is "kind" or "type" && here is not null;

    /// <summary>Such a key inside a value.</summary>
    [GeneratedRegex("""[{,\s]["']?(listed|source|locator|superseded-by|also|kind|type)["']?\s*:""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Written();
}
