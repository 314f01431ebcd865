using System.Globalization;

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>A single-row deep groove ball bearing of the table: its names and boundary dimensions (ISO 15, read from makers' handbooks).</summary>
/// <param name="Designation">The table's own name: <c>6901</c>, <c>688ZZ</c>.</param>
/// <param name="AlsoNamed">The same bearing in other styles: <c>61901</c>.</param>
/// <param name="Series">ISO dimension series, or "maker metric (MR)".</param>
/// <param name="Form">"open", "shielded both sides" or "open or capped".</param>
/// <param name="Bore">Bore in millimetres.</param>
/// <param name="Outside">Outside diameter in millimetres.</param>
/// <param name="Width">Width in millimetres.</param>
/// <param name="Makers">How many makers' handbooks agree on it.</param>
public sealed record BearingRow(
    string Designation, IReadOnlyList<string> AlsoNamed, string Series, string Form, decimal Bore, decimal Outside, decimal Width, int Makers)
{
    /// <summary>Whether the row holds for shields on both sides only.</summary>
    public bool Shielded => Form == "shielded both sides";

    /// <summary>Whether the row holds for every closure.</summary>
    public bool AnyClosure => Form == "open or capped";

    /// <summary>The number without its closure: <c>688</c>.</summary>
    public string Basic => Shielded ? BearingTable.WithoutClosure(Designation) : Designation;

    /// <summary>All names: "6901 = 61901".</summary>
    public string Names => string.Join(" = ", AlsoNamed.Prepend(Designation));

    internal static BearingRow From(IReadOnlyList<string> cells) => new(
        cells[0], [.. cells[1].Split([" | ", " = "], StringSplitOptions.RemoveEmptyEntries)], cells[2], cells[3],
        Number(cells[4]), Number(cells[5]), Number(cells[6]), int.Parse(cells[7], CultureInfo.InvariantCulture));

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
