namespace Crossref.Site.Pages.Views;

/// <summary>A bag or an idle unit of another shop.</summary>
/// <param name="Anchor">The id of its place on the page.</param>
/// <param name="Shop">Whose it is.</param>
/// <param name="What">What there is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Where">The bag or unit, and how good it is.</param>
public sealed record ElsewhereRow(string Anchor, string Shop, Phrase What, string Name, string Where);
