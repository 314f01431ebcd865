namespace Crossref.Site.Pages.Views;

/// <summary>Pieces of a part that lie in the house.</summary>
/// <param name="Holder">The bag, idle unit or order that holds them.</param>
/// <param name="Kind">What the holder is.</param>
/// <param name="Quantity">How many are left.</param>
/// <param name="Grade">How good they are; null for a part that is still in a unit.</param>
/// <param name="Bin">Where to find them.</param>
/// <param name="Usable">False for those kept for rebuilding or measuring only.</param>
/// <param name="IsOwed">Whether taking it leaves a unit that must run again without it.</param>
public sealed record StockLine(Link Holder, string Kind, int Quantity, string? Grade, string? Bin, bool Usable, bool IsOwed);
