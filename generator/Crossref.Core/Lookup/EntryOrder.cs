namespace Crossref.Core.Lookup;

/// <summary>
/// The order that gives entries their numbers in an index and settles ties between hits: what a workshop asks for
/// most comes first, then neighbours of one kind, so that a filter is a few runs.
/// </summary>
internal sealed class EntryOrder : IComparer<LookupEntry>
{
    public static readonly EntryOrder Instance = new();

    private static readonly string[] Types =
        ["part", "position", "symptom", "machine", "family", "assembly", "bag", "unit", "source", "note", "question", "repair"];

    public int Compare(LookupEntry? x, LookupEntry? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var order = Rank(x.Type).CompareTo(Rank(y.Type));
        order = order != 0 ? order : string.CompareOrdinal(x.Type, y.Type);
        order = order != 0 ? order : string.CompareOrdinal(x.Kind, y.Kind);
        order = order != 0 ? order : string.CompareOrdinal(x.Title, y.Title);
        return order != 0 ? order : string.CompareOrdinal(x.Id, y.Id);
    }

    private static int Rank(string type)
    {
        var rank = Array.IndexOf(Types, type);
        return rank < 0 ? Types.Length : rank;
    }
}
