using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Records;

namespace Crossref.Site.Pages;

/// <summary>
/// Where every page lives: the one place that knows. Overviews stand at the root, under names that no id can take;
/// records stand in a folder for their type. No path is over 120 characters.
/// </summary>
public sealed class PageMap
{
    // A folder of FAT32 holds about ten thousand entries with names as long as ours; a large library is spread over more folders.
    private const int MostInFolder = 4000;

    // A claim takes about a kilobyte of page.
    private const int ClaimsPerPage = 200;

    private readonly Dictionary<string, PagePlace> _claims = new(StringComparer.Ordinal);
    private readonly Library _library;

    /// <summary>Lays out the pages of a library.</summary>
    public PageMap(Library library)
    {
        _library = library;
        ClaimPages = Paginate(library);
    }

    /// <summary>The first page.</summary>
    public static string Home => "index.html";

    /// <summary>Pages of claims, newest first. The first is the overview.</summary>
    public IReadOnlyList<ClaimPage> ClaimPages { get; }

    /// <summary>An overview, by its word: <c>parts</c>, <c>shelf</c> and so on.</summary>
    public static string Overview(string name) => name + ".html";

    /// <summary>The parts of one kind.</summary>
    public static string Kind(PartKind kind, int page = 1) =>
        page == 1 ? $"kinds/{SafeName.Of(kind.Name)}.html" : FormattableString.Invariant($"kinds/{SafeName.Of(kind.Name)}--{page}.html");

    /// <summary>An assembly.</summary>
    public static string Of(Assembly assembly) => $"assemblies/{SafeName.Of(assembly.Family)}/{SafeName.Of(assembly.Id)}.html";

    /// <summary>A position.</summary>
    public static string Of(Position position) =>
        $"positions/{SafeName.Of(position.Family)}/{SafeName.Of(position.Assembly, position.Id)}.html";

    /// <summary>A calculator.</summary>
    public static string Of(Calculator calculator) => $"calculators/{calculator.Name}.html";

    /// <summary>A picture, by its path below the content folder; null for a kind of picture that pages do not show.</summary>
    public static string? Picture(string file)
    {
        var ending = Path.GetExtension(file).ToLowerInvariant();
        return ending is ".jpg" or ".jpeg" or ".png" or ".gif" or ".webp" ? $"pictures/{SafeName.Hash(file, 16)}{ending}" : null;
    }

    /// <summary>
    /// Where a record is shown: a page of its own, or a place on a page with others. Null for a record that has no page
    /// because it is retired or belongs to something that is not in the library.
    /// </summary>
    public PagePlace? Of(IRecord record) => record switch
    {
        Claim claim => _claims.GetValueOrDefault(claim.Id),
        LibraryRecord => new PagePlace(Home),
        { Retired: true } => null,
        Family => Own("families", record, _library.Families.Count),
        Part => Own("parts", record, _library.Parts.Count),
        Source => Own("sources", record, _library.Sources.Count),
        Repair => Own("repairs", record, _library.Repairs.Count),
        Machine => Own("machines", record, _library.Machines.Count),
        Symptom => Own("symptoms", record, _library.Symptoms.Count),
        Note => Own("notes", record, _library.Notes.Count),
        Bag or Unit or Order => new PagePlace(Overview("shelf"), Anchor(record.Id)),
        Question => new PagePlace(Overview("questions"), Anchor(record.Id)),
        _ => null,
    };

    /// <summary>The fragment for a record on a page that it shares with others.</summary>
    public static string Anchor(string id) => "r-" + SafeName.Of(id);

    private static PagePlace Own(string folder, IRecord record, int count) => new(
        count <= MostInFolder
            ? $"{folder}/{SafeName.Of(record.Id)}.html"
            : $"{folder}/{SafeName.Hash(record.Id, 2)}/{SafeName.Of(record.Id)}.html");

    // Counted from the oldest, so that a new claim moves none of the others until its page is full.
    private List<ClaimPage> Paginate(Library library)
    {
        var chunks = library.Claims.Values.OrderBy(c => c.Date).ThenBy(c => c.Id, StringComparer.Ordinal).Chunk(ClaimsPerPage).ToList();
        var pages = new List<ClaimPage>();
        for (var i = 0; i < Math.Max(chunks.Count - 2, 0); i++)
            pages.Insert(0, new ClaimPage(string.Create(CultureInfo.InvariantCulture, $"claims/{i + 1}.html"), [.. chunks[i].Reverse()]));
        // The overview holds the last page and what has come since.
        pages.Insert(0, new ClaimPage(Overview("claims"), [.. chunks.Skip(Math.Max(chunks.Count - 2, 0)).SelectMany(c => c).Reverse()]));
        foreach (var page in pages)
            foreach (var claim in page.Claims) _claims[claim.Id] = new PagePlace(page.Path, Anchor(claim.Id));
        return pages;
    }
}
