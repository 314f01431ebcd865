using System.Text;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

/// <summary>A content folder into which sheets are read.</summary>
internal sealed class SheetLibrary : IDisposable
{
    private static readonly DateOnly Today = new(2026, 6, 1);
    private readonly TemporaryFolder _folder = new();

    internal void Lay(string folder) => _folder.Lay(folder, (_, bytes) => bytes);

    internal void Write(string path, string text) => _folder.Write(path, text);

    internal ReadResult Read() => ContentReader.Read(_folder.Path);

    internal Library Sound()
    {
        var read = Read();
        Assert.DoesNotContain(read.Check(Today), d => d.Severity == Core.Checking.Severity.Error);
        return read.Library!;
    }

    internal ImportPlan Plan(byte[] sheet, string? kind = null, params (string Column, string Field)[] named) => Plan(new MemoryStream(sheet), kind, named);

    internal ImportPlan Plan(string sheet) => Plan(Encoding.UTF8.GetBytes(sheet));

    internal ImportPlan Plan(Stream sheet, string? kind = null, params (string Column, string Field)[] named)
    {
        var read = Read();
        return new SheetImport(sheet, "sheet.csv", read.Library!, Today)
            .Plan(_folder.Path, read, kind, named.ToDictionary(n => n.Column, n => n.Field, StringComparer.Ordinal));
    }

    /// <summary>Takes a plan in.</summary>
    internal void Apply(ImportPlan plan)
    {
        Assert.Empty(plan.Diagnostics.Where(d => d.Severity == Core.Checking.Severity.Error).Select(d => Core.Checking.DiagnosticText.Format(d)));
        using var store = ContentStore.Open(_folder.Path, new Disk());
        store.Apply(plan.Changes);
    }

    public void Dispose() => _folder.Dispose();
}
