namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>The width for a number and a closure, where the table has it.</summary>
internal static class BearingWidth
{
    /// <summary>
    /// Millimetres; null where the table has none for this closure. With a closure that is not listed the width is known
    /// only where the open and the shielded bearing are equally wide.
    /// </summary>
    internal static decimal? Of(string number, string? shields)
    {
        var (open, listed) = (BearingTable.Open(number), BearingTable.WithShields(number));
        if (open is { AnyClosure: true } || shields == "open") return open?.Width;
        if (shields == "2Z" && listed is not null) return listed.Width;
        var shielded = listed ?? BearingTable.WithShields(open!.Designation);
        return open is not null && shielded is not null && open.Width == shielded.Width ? open.Width : null;
    }

    /// <summary>What the table has for the other closures: "4 mm open, 5 mm with two shields".</summary>
    internal static string Listed(string number)
    {
        var open = BearingTable.Open(number);
        var shielded = BearingTable.WithShields(open?.Designation ?? number);
        return string.Join(", ", new[] { Text(open, "open"), Text(shielded, "with two shields") }.Where(t => t.Length > 0));
    }

    private static string Text(BearingRow? row, string form) => row is null ? "" : Figure.Of((double)row.Width, 3, "mm") + " " + form;
}
