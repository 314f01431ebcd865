namespace Crossref.Site.Pages.Views;

/// <summary>An assembly in a list.</summary>
/// <param name="Assembly">The assembly.</param>
/// <param name="Positions">How many positions it has.</param>
/// <param name="Without">How many of them have no accepted part.</param>
/// <param name="Cautions">Its hazards, in words.</param>
/// <param name="Cool">How long it must cool.</param>
public sealed record AssemblyLine(Link Assembly, int Positions, int Without, string Cautions, string Cool);
