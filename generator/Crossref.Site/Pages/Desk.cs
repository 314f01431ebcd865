using Crossref.Core.Arithmetic;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>What lies on the desk while pages are made: the library, its answers, and who speaks of what. Not for several threads.</summary>
internal sealed class Desk
{
    private readonly Dictionary<string, FitsAnswer> _answers;
    private readonly Dictionary<string, bool> _pictures = new(StringComparer.Ordinal);

    internal Desk(Library library, SiteOptions options, PageMap map)
    {
        Library = library;
        Options = options;
        Map = map;
        Fits = new Fits(library);
        Wording = new Wording(library);
        Index = new RecordIndex(library);
        Sizes = new SizeText(library.Card.Inches);
        Answers = [.. library.Positions.Keys.Order(StringComparer.Ordinal).Select(p => Fits.At(p))];
        _answers = Answers.ToDictionary(a => a.Position, StringComparer.Ordinal);
        Where = new WhereUsed(library, Fits, Answers);
        OnRecord = OnRecord.Of(library);
    }

    internal Library Library { get; }

    internal SiteOptions Options { get; }

    internal PageMap Map { get; }

    internal Fits Fits { get; }

    internal WhereUsed Where { get; }

    /// <summary>What calculators may look up.</summary>
    internal OnRecord OnRecord { get; }

    internal Wording Wording { get; }

    internal RecordIndex Index { get; }

    internal SizeText Sizes { get; }

    /// <summary>What fits every position, without a machine, by address.</summary>
    internal IReadOnlyList<FitsAnswer> Answers { get; }

    internal FitsAnswer AnswerAt(string position) => _answers[position];

    internal PageLinks LinksFrom(string path) => new(Library, Map, path);

    /// <summary>This shop's machines of a family, by id.</summary>
    internal IEnumerable<Machine> MachinesOf(string family) =>
        RecordIndex.Ours(Library.Machines.Values).Where(m => m.Family.Id == family);

    /// <summary>Pictures as a page shows them.</summary>
    internal IReadOnlyList<PictureView> PicturesFor(PageLinks links, IEnumerable<Picture> pictures) =>
        [.. pictures.Select(p => new PictureView(PictureHref(links, p.File), p.Shows))];

    /// <summary>The address of a picture's copy in the site; null when it cannot be shown.</summary>
    internal string? PictureHref(PageLinks links, string file) =>
        PageMap.Picture(file) is { } path && CanBeRead(file) ? links.Href(path) : null;

    private bool CanBeRead(string file)
    {
        if (!_pictures.TryGetValue(file, out var can)) _pictures[file] = can = Options.ReadPicture(file) is not null;
        return can;
    }
}
