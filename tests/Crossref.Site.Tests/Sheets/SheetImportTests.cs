using System.Text;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

public sealed class SheetImportTests : IDisposable
{
    private readonly SheetLibrary _library = new();

    public SheetImportTests() => _library.Lay(Path.Combine(Repository.SiteTests, "Sheets", "library"));

    public void Dispose() => _library.Dispose();

    [Theory]
    [InlineData("Part No,Description,MANUFACTURER,Type,Outer Diameter,Supplier\nOS-77,Gear,Ostrin,gear,40,Wharf\n")]
    [InlineData("\uFEFFPart No;Description;MANUFACTURER;Type;Outer Diameter;Supplier\r\nOS-77;Gear;Ostrin;Gear;40 mm;Wharf\r\n")]
    [InlineData("Part No\tDescription\tMANUFACTURER\tType\tOuter Diameter\tSupplier\nOS-77\tGear\tOstrin\tgear\t40\tWharf\n")]
    public void Headings_in_use_are_understood_whatever_divides_them(string sheet)
    {
        var plan = _library.Plan(sheet);
        Assert.Equal(["number", "name", "maker", "kind", "outside", null], plan.Columns.Select(c => c.Field));
        _library.Apply(plan);
        var part = _library.Sound().Parts["ostrin-os-77"];
        Assert.Equal(("Gear", "Ostrin", "OS-77", 40m), (part.Name, part.Maker, part.CurrentNumber, part.Sizes["outside"].Quantity!.Value.Value));
    }

    [Fact]
    public void A_column_may_be_named_or_left_out()
    {
        var sheet = Encoding.UTF8.GetBytes("Art. Nr.,Bezeichnung,Art,note\nOS-77,Zahnrad,gear,secret\n");
        var plan = _library.Plan(sheet, "parts", ("Art. Nr.", "number"), ("Bezeichnung", "name"), ("Art", "kind"), ("note", SheetImport.NotUsed));
        _library.Apply(plan);
        Assert.Equal(("Zahnrad", (string?)null), (_library.Sound().Parts["os-77"].Name, _library.Sound().Parts["os-77"].Note));
    }

    [Fact]
    public void What_is_on_record_already_is_skipped_and_a_second_time_nothing_is_new()
    {
        var plan = _library.Plan("kind,name,maker,number,bore,width\nbearing,\"Bearing, fold roller\",Ostrin,OS-1203-02,12 mm,\ngear,Gear,Ostrin,OS-77,,\n");
        Assert.Equal(["ostrin-os-77"], plan.New);
        Assert.Equal(["brg-os-1203"], plan.Known);
        _library.Apply(plan);
        const string bags = "part number,grade,qty,bin\nOS-1203-02,New sealed,2,B1\nOS-77,core,1,\n";
        _library.Apply(_library.Plan(bags));
        Assert.Equal(3, _library.Sound().Bags.Count);
        Assert.Empty(_library.Plan(bags).New);
        Assert.Equal(2, _library.Plan(bags).Known.Count);
    }

    [Fact]
    public void Ids_are_made_of_maker_and_number_and_stay_unique_and_short()
    {
        var plan = _library.Plan($"kind,name,maker,number\ngear,Gear,Ostrin,A.1\ngear,Gear,Ostrin A,1\ngear,Gear,,CON\ngear,Gear,Größe,{new string('9', 60)}\ngear,Gear,Größe,{new string('9', 61)}\n");
        Assert.Equal(["ostrin-a-1", "ostrin-a-1-2", "con-2", "grosse-" + new string('9', 33), "grosse-" + new string('9', 31) + "-2"], plan.New);
        _library.Apply(plan);
    }

    [Fact]
    public void Windows_1252_is_read_and_said()
    {
        var plan = _library.Plan(CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetBytes("kind,name,number\ngear,Räder – 5 €,OS-77\n"));
        Assert.StartsWith("Windows-1252", plan.Written, StringComparison.Ordinal);
        _library.Apply(plan);
        Assert.Equal("Räder – 5 €", _library.Sound().Parts["os-77"].Name);
    }

    [Fact]
    public void A_row_that_is_wrong_is_not_missing_as_well()
    {
        var plan = _library.Plan("id,kind,name,superseded by\ngear-1,gear,Gear,gear-2\ngear-2,gaer,Gear,\n");
        Assert.Equal(["CR0205"], plan.Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void Twenty_thousand_rows_are_taken_in_and_cost_four_times_what_five_thousand_do()
    {
        var (few, many) = (Sheet(5_000), Sheet(20_000));
        var before = GC.GetAllocatedBytesForCurrentThread();
        _library.Plan(few);
        var between = GC.GetAllocatedBytesForCurrentThread();
        var plan = _library.Plan(many);
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - between) / (double)(between - before), 2, 6);
        // Files of records are refused above one megabyte.
        Assert.InRange(plan.Changes.Count, 2, 20);
        Assert.All(plan.Changes, c => Assert.InRange(c.Content!.Length, 1, 1_000_000));
        _library.Apply(plan);
        Assert.Equal(20_003, _library.Sound().Parts.Count);

        static string Sheet(int rows) => "kind,name,maker,number,bore,outside,width,price\n" +
            string.Concat(Enumerable.Range(0, rows).Select(i => $"bearing,Bearing {i},Velm,LONG-{i:00000},12,{20 + i % 30},8,4.50\n"));
    }
}
