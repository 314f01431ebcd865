using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A note's page.</summary>
internal sealed class NotePages(Desk desk)
{
    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Notes.Values).Select(Of);

    private Sheet Of(Note note)
    {
        var path = desk.Map.Of(note)!.Value.Path;
        var links = desk.LinksFrom(path);
        var view = new NoteView(new NoteHtml(desk, links).Of(note), [.. note.About.Select(a => links.Record(a.Id))]);
        return new Sheet(path, "note.html", "Note", note.Title, Crumbs.Of(links, links.Overview("notes", "Notes")), view) { Reference = note.Id };
    }
}
