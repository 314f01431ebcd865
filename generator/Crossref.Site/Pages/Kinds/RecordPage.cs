using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Recording;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>The form for a finding or a question, and the list of those that are not in the library yet.</summary>
internal sealed class RecordPage(Desk desk)
{
    private static readonly IReadOnlyList<string> Form =
        [RecordScript.Path, KnownScript.Path, "record-text.js", "record-check.js", "record-picker.js", "record-kept.js", "record-list.js", "record-form.js"];

    /// <summary>What a position's page needs to show what was recorded on that PC.</summary>
    internal static IReadOnlyList<string> Here { get; } = ["record-kept.js", "record-here.js"];

    internal static string Path => PageMap.Overview("record");

    internal IEnumerable<Sheet> All()
    {
        yield return new Sheet(Path, "record.html", "Form", "Record a finding", Crumbs.Of(desk.LinksFrom(Path)), new RecordView(desk.Library.Card.Title))
        {
            Reference = "record",
            Scripts = Form,
        };
    }
}
