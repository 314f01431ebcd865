namespace Crossref.Core.Records;

/// <summary>
/// Whose a record is. Shop records belong to the library that minted them: another library's lie under
/// <c>from/&lt;library&gt;/</c> and are addressed <c>library:id</c> from here, so that equal ids never mix. Catalogue
/// records (families, parts, sources, symptoms, notes) are shared, but a source remembers where it came from.
/// </summary>
public static class Owner
{
    private const char Mark = ':';

    /// <summary>The folder below the content folder in which other libraries' records lie, one folder each.</summary>
    public const string Folder = "from/";

    /// <summary>Whether records of that type belong to the library that minted them.</summary>
    public static bool IsShop(RecordType type) => type is RecordType.Library or RecordType.Machine or RecordType.Unit or RecordType.Bag
        or RecordType.Order or RecordType.Repair or RecordType.Claim or RecordType.Question;

    /// <summary>The id of another library's record as it is addressed from here.</summary>
    public static string Address(string library, string id) => library + Mark + id;

    /// <summary>The other library that an id names; null for one of our own.</summary>
    public static string? Of(string id) => id.IndexOf(Mark, StringComparison.Ordinal) is > 0 and var at ? id[..at] : null;

    /// <summary>The id as its own library writes it.</summary>
    public static string Local(string id) => id[(id.IndexOf(Mark, StringComparison.Ordinal) + 1)..];

    /// <summary>Whether a record is another library's.</summary>
    public static bool IsElsewhere(IRecord record) => Of(record.Id) is not null;

    /// <summary>The path below the content folder of a file that a record names: another library's files lie in its own folder.</summary>
    /// <param name="record">The file in which the record stands.</param>
    /// <param name="named">The path that it writes.</param>
    public static string FileNamedIn(string record, string named) => OfFile(record) is { } library ? Folder + library + "/" + named : named;

    /// <summary>The other library from which a file came, by its path below the content folder; null for one of our own.</summary>
    public static string? OfFile(string path) =>
        path.StartsWith(Folder, StringComparison.Ordinal) && path.IndexOf('/', Folder.Length) is > 5 and var end ? path[Folder.Length..end] : null;
}
