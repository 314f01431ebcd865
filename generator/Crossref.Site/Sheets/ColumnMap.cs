using Crossref.Site.Reading;

namespace Crossref.Site.Sheets;

/// <summary>Which column of a sheet is which field.</summary>
internal sealed class ColumnMap
{
    private ColumnMap(SheetKind kind, SheetField?[] fields)
    {
        (Kind, Fields) = (kind, fields);
        Missing = [.. kind.Fields.Where(f => !f.IsSize && f.Key != kind.Shape.Name && kind.Shape.Find(f.Key)!.Required && !fields.Contains(f))];
    }

    internal SheetKind Kind { get; }

    /// <summary>A field for each column; null where it is not used.</summary>
    internal IReadOnlyList<SheetField?> Fields { get; }

    /// <summary>The keys that no column gives although every record needs them. An id is made where there is none.</summary>
    internal IReadOnlyList<SheetField> Missing { get; }

    /// <summary>Finds the columns; those that are named on the command line come before those that are known.</summary>
    internal static ColumnMap Of(Sheet sheet, SheetKind? asked, IReadOnlyDictionary<string, string> named)
    {
        // What lacks least is what is meant; a grade, for one, may be that of a filter or of a bag.
        return (asked is null ? SheetKind.All : [asked]).Select(Columns).OrderBy(c => c.Missing.Count).ThenByDescending(c => c.Fields.Count(f => f is not null)).First();

        ColumnMap Columns(SheetKind kind) =>
            new(kind, [.. sheet.Headings.Cells.Select(c => kind.Find(named.TryGetValue(c.Trim(), out var field) ? field : c))]);
    }

    /// <summary>Whether a row can say which part it is. A bag may be one that has no id yet.</summary>
    internal bool NamesRows => Kind == SheetKind.Bags || Fields.Any(f => f is { IsSize: false } && (f.Key == Kind.Shape.Name || f.Key == "numbers"));

    internal void Report(Sheet sheet, DiagnosticLog log)
    {
        if (Fields.All(f => f is null))
        {
            log.Add(SheetCodes.Columns, sheet.PlaceOf(sheet.Headings, 0), "the first row names no column that is known here",
                "it has to name the columns, such as kind, name, maker, number: take away a title above them, or name yours: --map \"Your column=number\"");
            return;
        }
        foreach (var field in Missing)
        {
            log.Add(SheetCodes.Columns, sheet.PlaceOf(sheet.Headings, 0), $"no column says the {field.Title} of the {Kind.Name}",
                $"add a column '{field.Title}', or name yours: --map \"Your column={field.Title}\"");
        }
        if (!NamesRows)
        {
            log.Add(SheetCodes.Columns, sheet.PlaceOf(sheet.Headings, 0), "no column says the number of the parts, nor their id",
                "add a column 'number', or name yours: --map \"Your column=number\"");
        }
        for (var column = 0; column < Fields.Count; column++)
        {
            if (Fields[column] is not { } field || Fields.Take(column).ToList().IndexOf(field) is not (>= 0 and var first)) continue;
            // A name that both columns have would leave both out.
            var name = sheet.Headings[column].Trim();
            log.Add(SheetCodes.Columns, sheet.PlaceOf(sheet.Headings, column),
                $"columns {ImportColumn.LetterOf(first)} and {ImportColumn.LetterOf(column)} are both read as {field.Title}",
                sheet.Headings[first].Trim() == name ? "give one of them another name in the first row" : $"leave one of them out: --map \"{name}={SheetImport.NotUsed}\"");
        }
    }
}
