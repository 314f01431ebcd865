using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Lookup;
using Crossref.Core.Records;
using Crossref.Site.Pages.Calculation;
using Crossref.Site.Pages.Kinds;
using Crossref.Site.Pages.Recording;
using Crossref.Site.Pages.Templating;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>The pages stage: a library in, every file of its site out.</summary>
public static class SitePages
{
    /// <summary>
    /// Renders a library, one file after the other, in an order that is always the same. The same library, options and
    /// templates give the same bytes.
    /// </summary>
    /// <exception cref="TemplateProblemException">A template is wrong.</exception>
    public static IEnumerable<SiteFile> Render(Library library, SiteOptions options)
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(options);
        return Files(library, options);
    }

    private static IEnumerable<SiteFile> Files(Library library, SiteOptions options)
    {
        var folder = new TemplateFolder(options.TemplateFolder);
        var writer = new PageWriter(folder);
        var desk = new Desk(library, options, new PageMap(library));
        foreach (var sheet in Sheets(desk))
            yield return SiteFile.Text(sheet.Path, writer.Write(FrameOf(desk, sheet), sheet.View));
        foreach (var name in TemplateFolder.Assets)
            yield return new SiteFile(name, folder.Read(name));
        yield return CalculatorScript.Of(desk.OnRecord, position => PageMap.Of(library.Positions[position]));
        yield return RecordScript.Of(desk);
        yield return KnownScript.Of(library);
        foreach (var kind in Calculators.All.Select(c => c.Seeks).OfType<PartKind>()) yield return PartsScript.Of(desk, kind);
        foreach (var file in LookupIndex.Build(LookupEntries.Of(library, desk.Map, desk.Answers)))
            yield return SiteFile.Text(file.Path, file.Text);
        foreach (var picture in Pictures(library, options)) yield return picture;
    }

    // In the order of a walk through the shop; each kind makes its pages only when they are asked for.
    private static IEnumerable<Sheet> Sheets(Desk desk) => new IEnumerable<Sheet>[]
    {
        new HomePage(desk).All(),
        new FamilyPages(desk).All(),
        new AssemblyPages(desk).All(),
        new PositionPages(desk).All(),
        new PartPages(desk).All(),
        new MachinePages(desk).All(),
        new SymptomPages(desk).All(),
        new RepairPages(desk).All(),
        new ShelfPage(desk).All(),
        new NotePages(desk).All(),
        new SourcePages(desk).All(),
        new ClaimPages(desk).All(),
        new OpenPages(desk).All(),
        new ChangesPage(desk).All(),
        new CopiesPage(desk).All(),
        new MeaningPages(desk).All(),
        new OverviewPages(desk).All(),
        new InterchangePages(desk).All(),
        new CalculatorPages(desk).All(),
        new RecordPage(desk).All(),
    }.SelectMany(sheets => sheets);

    private static Frame FrameOf(Desk desk, Sheet sheet)
    {
        var links = desk.LinksFrom(sheet.Path);
        return new Frame
        {
            Template = sheet.Template,
            Title = sheet.Title,
            Kind = sheet.Kind,
            Reference = sheet.Reference ?? sheet.Title,
            Root = links.Root,
            Library = desk.Library.Card.Title,
            LibraryId = desk.Library.Card.Id,
            Date = desk.Options.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Scripts = sheet.Scripts,
            Crumbs = sheet.Crumbs,
            Menu = Menu.Main(links),
            More = Menu.More(links),
        };
    }

    private static IEnumerable<SiteFile> Pictures(Library library, SiteOptions options)
    {
        var all = library.Parts.Values.SelectMany(p => p.Pictures)
            .Concat(library.Positions.Values.SelectMany(p => p.Pictures))
            .Concat(library.Claims.Values.SelectMany(c => c.Pictures))
            .Concat(library.Repairs.Values.SelectMany(r => r.Pictures))
            .Concat(library.Notes.Values.SelectMany(n => n.Pictures));
        foreach (var file in all.Select(p => p.File).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
            if (PageMap.Picture(file) is { } path && options.ReadPicture(file) is { } bytes) yield return new SiteFile(path, bytes);
    }
}
