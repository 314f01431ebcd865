using System.Text;
using System.Text.Unicode;
using CsvHelper;
using Crossref.Core.Records;
using Crossref.Site.Reading;

namespace Crossref.Site.Sheets;

/// <summary>Reads a sheet, or says why it cannot be read. What is too large is refused before it is read.</summary>
internal static class SheetReader
{
    internal const int LargestFile = 32 * 1024 * 1024;
    internal const int MostColumns = 500;
    internal const int MostRows = 100_000;

    /// <summary>The sheet; null after what is wrong was reported.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    internal static Sheet? Read(Stream stream, string name, DiagnosticLog log)
    {
        if (Bytes(stream) is not { } bytes) return Refuse("is over 32 MB", "split it into several sheets");
        if (bytes is [(byte)'P', (byte)'K', 3, 4, ..] or [0xD0, 0xCF, 0x11, 0xE0, ..])
            return Refuse("is a workbook of a spreadsheet, not a sheet of text", "open it there and save the sheet as CSV, best as CSV UTF-8");
        var (text, charset) = Text(bytes);
        var rows = new List<SheetRow>();
        var options = CsvReaderOptions.Default with
        {
            HasHeader = false,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Skip,
            OnMalformedRecord = r => log.Add(SheetCodes.Quotes, new Place(name, (int)r.LineNumber, 1), Stray(r.Reason), "put the whole cell into quote marks, and write one that belongs to the text twice: \"a 5\"\" roller\""),
        };
        using var csv = CsvReader.FromText(text, options);
        while (csv.Read())
        {
            if (csv.FieldCount > MostColumns) return Refuse($"has {csv.FieldCount} columns in line {csv.LineNumber}", $"leave out those that say nothing about parts; {MostColumns} are read");
            if (rows.Count > MostRows) return Refuse($"has over {MostRows} rows", "split it into several sheets");
            var row = new SheetRow((int)csv.LineNumber, [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
            if (row.Cells.Any(c => !string.IsNullOrWhiteSpace(c))) rows.Add(row);
        }
        if (rows.Count == 0) return Refuse("holds nothing", "the first row names the columns, such as kind, name, maker, number");
        var separator = csv.Separator switch { ',' => "commas", ';' => "semicolons", '\t' => "tabs", var other => other.ToString() };
        return new Sheet(name, $"{charset}, divided by {separator}", rows[0], [.. rows.Skip(1)]);

        Sheet? Refuse(string what, string hint)
        {
            log.Add(SheetCodes.NotASheet, new Place(name, 0, 0), $"this file {what}", hint);
            return null;
        }
    }

    private static string Stray(CsvMalformedReason reason) =>
        reason == CsvMalformedReason.UnterminatedQuote ? "a quote mark opens a cell here and is never closed" : "a quote mark stands in the middle of a cell";

    private static byte[]? Bytes(Stream stream)
    {
        if (stream.CanSeek && stream.Length > LargestFile) return null;
        // What has no length, such as a device, ends where the limit is.
        using var read = new MemoryStream();
        var buffer = new byte[81920];
        for (int length; (length = stream.Read(buffer)) > 0;)
        {
            read.Write(buffer, 0, length);
            if (read.Length > LargestFile) return null;
        }
        return read.ToArray();
    }

    private static (string Text, string Charset) Text(byte[] bytes)
    {
        if (bytes is [0xFF, 0xFE, ..]) return (Encoding.Unicode.GetString(bytes.AsSpan(2)), "UTF-16");
        if (bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[3..];
        return Utf8.IsValid(bytes)
            ? (Encoding.UTF8.GetString(bytes), "UTF-8")
            : (CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes), "Windows-1252, since it is not UTF-8 (look at letters with accents)");
    }
}
