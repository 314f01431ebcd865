namespace Crossref.Site.Pages.Pieces;

/// <summary>Bins in the order they hang: letters by the alphabet, numbers by their value, so that B4 comes before B12.</summary>
internal sealed class BinOrder : IComparer<string?>
{
    internal static BinOrder Instance { get; } = new();

    public int Compare(string? x, string? y)
    {
        if (x is null || y is null) return (x is null ? 1 : 0) - (y is null ? 1 : 0);
        var (i, j) = (0, 0);
        while (i < x.Length && j < y.Length)
        {
            var order = char.IsAsciiDigit(x[i]) && char.IsAsciiDigit(y[j])
                ? CompareNumbers(Digits(x, ref i), Digits(y, ref j))
                : x[i++].CompareTo(y[j++]);
            if (order != 0) return order;
        }
        var rest = (x.Length - i).CompareTo(y.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(x, y);
    }

    private static string Digits(string text, ref int at)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text[start..at].TrimStart('0');
    }

    private static int CompareNumbers(string left, string right) =>
        left.Length != right.Length ? left.Length.CompareTo(right.Length) : string.CompareOrdinal(left, right);
}
