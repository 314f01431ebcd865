namespace Crossref.Site.Pages.Views;

/// <summary>One size of a part.</summary>
/// <param name="Name">The attribute.</param>
/// <param name="Value">The value, or <c>unknown</c>.</param>
/// <param name="Unit">Its unit; empty for a word.</param>
/// <param name="Known">Whether it is on record.</param>
/// <param name="Role">Whether it must match, decides, or neither.</param>
/// <param name="From">Where it comes from when nobody wrote it, or what the designation says instead; empty for nothing.</param>
public sealed record SizeLine(string Name, string Value, string Unit, bool Known, string Role, string From);
