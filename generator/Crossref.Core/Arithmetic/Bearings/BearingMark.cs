namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>Letters after a bearing's number.</summary>
/// <param name="Text">As written, in capitals: <c>2RSH</c>.</param>
/// <param name="Says">What it speaks of: closure, clearance, class, "class and clearance", other; empty when it is not known.</param>
/// <param name="Value">In the words used here: <c>2RS</c>.</param>
/// <param name="Meaning">In plain words; empty when it is not known.</param>
/// <param name="Glued">Whether it may follow the mark before it without a space.</param>
public sealed record BearingMark(string Text, string Says, string Value, string Meaning, bool Glued)
{
    internal static BearingMark From(IReadOnlyList<string> cells) => new(cells[0], cells[1], cells[2], cells[3], cells[4] == "yes");

    internal static BearingMark Unread(string text) => new(text, "", "", "", false);
}
