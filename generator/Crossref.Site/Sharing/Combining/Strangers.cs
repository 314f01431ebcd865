using Crossref.Core.Records;
using Crossref.Site.Sharing.Histories;

namespace Crossref.Site.Sharing.Combining;

/// <summary>
/// Two records that happen to have one id: neither copy has ever seen a text of the other, and they speak of different
/// things. Joined key by key they would come to a third thing that nobody wrote.
/// </summary>
internal static class Strangers
{
    private static readonly Dictionary<RecordType, string[]> SaysWhatItIs = new()
    {
        [RecordType.Family] = ["maker"],
        [RecordType.Part] = ["kind", "maker", "numbers"],
        [RecordType.Source] = ["type"],
        [RecordType.Claim] = ["part", "at", "replaces", "verdict"],
        [RecordType.Machine] = ["family", "serial"],
        [RecordType.Bag] = ["part"],
        [RecordType.Unit] = ["family", "assembly"],
        [RecordType.Order] = ["part"],
        [RecordType.Repair] = ["machine", "unit", "date"],
    };

    internal static bool Are(RecordHistory one, RecordHistory other) =>
        !one.Known.Overlaps(other.Known) && SaysWhatItIs.GetValueOrDefault(one.Type, []).Any(name => Differ(one.Shown.Values, other.Shown.Values, Keys.Child(Keys.Top, "=" + name)));

    private static bool Differ(IReadOnlyDictionary<string, string> one, IReadOnlyDictionary<string, string> other, string key) =>
        one.TryGetValue(key, out var here) && other.TryGetValue(key, out var there) && here.Trim() != there.Trim();
}
