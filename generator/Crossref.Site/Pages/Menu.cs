using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>The overviews that every page leads to.</summary>
internal static class Menu
{
    /// <summary>Those a repair begins with.</summary>
    internal static IReadOnlyList<Link> Main(PageLinks links) =>
    [
        links.Overview("machines", "Machines"),
        links.Overview("symptoms", "Symptoms"),
        links.Overview("parts", "Parts"),
        links.Overview("shelf", "Shelf"),
        links.Overview("calculators", "Calculators"),
        links.Overview("record", "Record a finding"),
    ];

    /// <summary>All others.</summary>
    internal static IReadOnlyList<Link> More(PageLinks links) =>
    [
        links.Overview("roles", "Interchange by job"),
        links.Overview("repairs", "Repairs"),
        links.Overview("notes", "Notes"),
        links.Overview("claims", "Claims"),
        links.Overview("disputes", "Disputes"),
        links.Overview("changes", "What changed"),
        links.Overview("copies", "From other copies"),
        links.Overview("questions", "Questions"),
        links.Overview("sources", "Sources"),
        links.Overview("cautions", "Cautions"),
        links.Overview("standings", "What the words mean"),
    ];
}
