using System.Globalization;
using CsvHelper;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Writing;
using static Crossref.Site.Sheets.SheetField;

namespace Crossref.Site.Sheets;

/// <summary>Writes what a library says as sheets, which any spreadsheet opens.</summary>
public static class SheetExport
{
    // Another list than a site's, so that neither takes the other's files for its own stale ones.
    private const string ListName = "crossref-sheets.sha256";

    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with { WriteByteOrderMark = true };

    /// <summary>The names of the sheets.</summary>
    public static IReadOnlyList<string> Names { get; } = ["parts.csv", "bags.csv", "claims.csv", "positions.csv"];

    /// <summary>The sheets: <c>parts.csv</c>, <c>bags.csv</c>, <c>claims.csv</c> and <c>positions.csv</c>. Bags are this shop's own.</summary>
    public static IReadOnlyList<SiteFile> Files(Library library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return
        [
            File(Names[0], [.. PartColumns.All.Where(f => !f.IsSize || library.Parts.Values.Any(p => f.Write(p) is not null))], library.Parts.Values),
            File(Names[1], [.. BagColumns.All, .. BagsToRead(library)], library.Bags.Values.Where(b => !Owner.IsElsewhere(b))),
            File(Names[2], ClaimsToRead(library), library.Claims.Values),
            PositionsToRead(library),
        ];
    }

    /// <summary>Writes the sheets into a folder. A sheet that somebody has changed since is never overwritten.</summary>
    /// <exception cref="SiteFolderException">A sheet was changed, the folder holds files of somebody else, or it cannot be written.</exception>
    public static SiteChanges Write(Library library, string folder, IDisk disk)
    {
        var files = Files(library);
        var list = Path.Combine(folder, ListName);
        try
        {
            var written = System.IO.File.Exists(list) ? System.IO.File.ReadAllLines(list) : [];
            foreach (var path in files.Select(f => f.Path).Where(p => System.IO.File.Exists(Path.Combine(folder, p))))
            {
                var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.IO.File.ReadAllBytes(Path.Combine(folder, path))));
                if (!written.Contains($"{hash}  {path}"))
                    throw new SiteFolderException($"{Path.Combine(folder, path)} was changed since it was written. Nothing was written.", "Move it away, or choose another folder with --out; crossref import reads a changed sheet.");
            }
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException && e is not SiteFolderException)
        {
            throw new SiteFolderException($"{folder} could not be read: {e.Message}", "Close the sheet in the spreadsheet, or choose another folder with --out.", e);
        }
        return new SiteWriter(folder, disk, ListName).Write(files);
    }

    private static IEnumerable<SheetField> BagsToRead(Library library)
    {
        var house = new House(library);
        yield return Of<Bag>("", "part name", b => library.Parts.GetValueOrDefault(b.Part.Id)?.Name);
        yield return Figure<Bag>("", "left", b => house.Left(b.Id).ToString(CultureInfo.InvariantCulture));
    }

    private static SheetField[] ClaimsToRead(Library library) =>
    [
        Of<Claim>("", "id", c => c.Id),
        Of<Claim>("", "part", c => c.Part.Id),
        Of<Claim>("", "part name", c => library.Parts.GetValueOrDefault(c.Part.Id)?.Name),
        Of<Claim>("", "at", c => c.At?.Id),
        Of<Claim>("", "replaces", c => c.Replaces?.Id),
        Of<Claim>("", "where", c => c.Where?.Id),
        Of<Claim>("", "both ways", c => PartColumns.Yes(c.BothWays)),
        Of<Claim>("", "verdict", c => c.Verdict is { } verdict ? Words.Of(verdict) : null),
        Of<Claim>("", "basis", c => c.Basis is { } basis ? Words.Of(basis) : null),
        Figure<Claim>("", "ran", c => PartColumns.Number(c.Run?.Value)),
        Of<Claim>("", "counted in", c => c.Run is { } run ? Words.Of(run.Unit) : null),
        Of<Claim>("", "models", c => ListCell.Write(c.OnlyIf.Models)),
        Of<Claim>("", "serial from", c => c.OnlyIf.SerialFrom),
        Of<Claim>("", "serial to", c => c.OnlyIf.SerialTo),
        Figure<Claim>("", "mains", c => PartColumns.Number(c.OnlyIf.Mains)),
        Of<Claim>("", "change", c => c.Change),
        Of<Claim>("", "machine", c => c.Machine?.Id),
        Of<Claim>("", "neighbours", c => c.NeighboursDamaged switch { true => "damaged", false => "undamaged", _ => null }),
        Of<Claim>("", "source", c => c.Source?.Id),
        Of<Claim>("", "locator", c => c.Locator),
        Of<Claim>("", "by", c => c.By),
        Of<Claim>("", "date", c => c.Date.IsUnknown ? null : c.Date.ToString()),
        Of<Claim>("", "withdraws", c => c.Withdraws?.Id),
        Of<Claim>("", "shop", c => library.ShopName(library.ShopOf(c.Id))),
        Of<Claim>("", "note", c => c.Note),
    ];

    private static SiteFile PositionsToRead(Library library)
    {
        var fits = new Fits(library);
        (string Title, bool IsFigure, Func<Position, string?> Write)[] columns =
        [
            ("position", false, p => p.Address),
            ("family", false, p => library.Families[p.Family].Name),
            ("assembly", false, p => library.Assemblies[$"{p.Family}/{p.Assembly}"].Name),
            ("name", false, p => p.Name),
            ("kind", false, p => p.Kind.Name),
            ("role", false, p => p.Role),
            ("quantity", true, p => p.Quantity.ToString(CultureInfo.InvariantCulture)),
            ("listed", false, p => ListCell.Write(p.Listed.Select(l => l.Part.Id))),
            ("fits", false, p => ListCell.Write(fits.At(p.Address).Candidates.Where(c => c.Accepted).Select(c => c.Part))),
            ("safety", false, p => PartColumns.Yes(library.IsSafety(p))),
            ("source", false, p => p.Source?.Id),
            ("locator", false, p => p.Locator),
            ("note", false, p => p.Note),
        ];
        return File(Names[3], [.. columns.Select(c => c.Title)],
            library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal)
                .Select(p => columns.Select(c => c.Write(p) is not { Length: > 0 } text ? "" : c.IsFigure ? CellText.WriteFigure(text) : CellText.Write(text))));
    }

    private static SiteFile File(string path, IReadOnlyList<SheetField> fields, IEnumerable<IRecord> records) =>
        File(path, [.. fields.Select(f => f.Title)], records.OrderBy(r => r.Id, StringComparer.Ordinal).Select(r => fields.Select(f => f.Cell(r))));

    private static SiteFile File(string path, IReadOnlyList<string> titles, IEnumerable<IEnumerable<string>> rows)
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, Options, leaveOpen: true))
        {
            foreach (var row in rows.Prepend(titles))
            {
                foreach (var cell in row) csv.WriteField(cell);
                csv.EndRecord();
            }
        }
        return new SiteFile(path, bytes.ToArray());
    }
}
