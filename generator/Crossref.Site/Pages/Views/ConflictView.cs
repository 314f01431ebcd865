namespace Crossref.Site.Pages.Views;

/// <summary>A record of which copies differ.</summary>
/// <param name="Record">The record.</param>
/// <param name="File">The file to delete once it is settled.</param>
/// <param name="Keys">Where copies differ.</param>
public sealed record ConflictView(Phrase Record, string File, IReadOnlyList<ConflictKeyView> Keys);
