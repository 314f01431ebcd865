using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>Mistakes in a note's text.</summary>
internal static class NotePlants
{
    private static readonly (string Mistake, string Code, string Line)[] Table =
    [
        ("raw HTML", "CR0302", "A <b>bold</b> word."),
        ("raw HTML", "CR0302", "<div>"),
        ("raw HTML", "CR0302", "<!-- a remark -->"),
        ("link that leaves", "CR0303", "See [there](https://example.org)."),
        ("link that leaves", "CR0303", "See [there](prt:gear-left)."),
        ("link that leaves", "CR0303", "See [there](gear-left)."),
        ("link that leaves", "CR0303", "See [there](javascript:alert)."),
        ("link that leaves", "CR0303", "See <https://example.org>."),
        ("link that leaves", "CR0303", "See [there](part:)."),
        ("picture from elsewhere", "CR0304", "![The flange](../flange.jpg)"),
        ("picture from elsewhere", "CR0304", "![The flange](https://example.org/flange.jpg)"),
        ("picture missing", "CR0305", "![The flange](pictures/flanje.jpg)"),
        ("format of a picture", "CR0306", "![The flange](pictures/flange.svg)"),
        ("picture without words", "CR0308", "![](pictures/flange.jpg)"),
        ("reference to nothing", "CR0403", "See [there](part:xyzzy-quux)."),
        ("reference to nothing", "CR0405", "See [there](position:ostrin-f2/fold-head/xyzzy-quux)."),
        ("reference to nothing", "CR0406", "See [there](assembly:ostrin-f2/xyzzy-quux)."),
        ("reference to the wrong type", "CR0404", "See [there](machine:gear-left)."),
        ("reference to the wrong type", "CR0404", "See [there](part:folder-1)."),
        ("retired, but referred to", "CR0407", "See [there](part:old-part)."),
    ];

    internal static IEnumerable<Plant> All(Bed bed)
    {
        var note = bed.Documents.Single(d => d.Body is not null);
        foreach (var (mistake, code, line) in Table)
        {
            yield return new Plant(mistake, line, () =>
            {
                var old = note.Body;
                note.Body = $"{line}\n\n{old}";
                return () => note.Body = old;
            }, () => new(code, note.File, FirstLine(note)));
        }
    }

    // Behind the front matter: a line of dashes, its keys, a line of dashes.
    private static int FirstLine(BedDocument note) => Lines(note.Root) + 3;

    private static int Lines(Item map) => map.Keys!.Sum(e => 1 + (e.Value.Rows?.Count ?? 0));
}
