using System.Globalization;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Assemblies in a list.</summary>
internal static class AssemblyLines
{
    internal static AssemblyLine Of(Desk desk, PageLinks links, Assembly assembly) => new(
        links.Assembly(assembly.Address),
        assembly.Positions.Count,
        assembly.Positions.Count(p => !desk.AnswerAt(p.Address).Candidates.Any(c => c.Accepted)),
        assembly.Cautions.Count == 0 ? "none on record" : string.Join(", ", assembly.Cautions.Select(h => h.Name)),
        assembly.Cool is { } cool ? string.Create(CultureInfo.InvariantCulture, $"{cool.TotalMinutes:0} min") : "not on record");
}
