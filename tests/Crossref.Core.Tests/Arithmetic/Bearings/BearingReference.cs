using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Tests.Conventions;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>Published figures, kept apart from the tables that the program reads; every file names its sources at its top.</summary>
internal static class BearingReference
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Boundaries { get; } = Load("bearings-iso15.csv");
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Flanges { get; } = Load("bearings-flanged.csv");
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Limits { get; } = Load("bearings-iso492-normal.csv");
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Clearances { get; } = Load("bearings-iso5753.csv");

    /// <summary>
    /// Sizes that open CAD part libraries list (BOSL2 ball_bearings, bd_warehouse, NopSCADlib): another route than the
    /// handbooks. Two known errors are put right here: BOSL2 lists 16002 as 22 mm outside (four makers: 32), and
    /// bd_warehouse 638 as 6 mm wide (NSK, FBJ: 9), which is left out.
    /// </summary>
    internal static IReadOnlyDictionary<string, (double Bore, double Outside, double Width)> Drawn { get; } =
        """
        608 8 22 7;629 9 26 8;635 5 19 6;6000 10 26 8;6001 12 28 8;6002 15 32 9;6003 17 35 10;6007 35 62 14;6200 10 30 9;6201 12 32 10;6202 15 35 11;6203 17 40 12
        6204 20 47 14;6205 25 52 15;6206 30 62 16;6207 35 72 17;6208 40 80 18;6209 45 85 19;6210 50 90 20;6301 12 37 12;6302 15 42 13;6303 17 47 14;6304 20 52 15;6305 25 62 17
        6306 30 72 19;6307 35 80 21;6308 40 90 23;6309 45 100 25;6310 50 110 27;6403 17 62 17;6800 10 19 5;6801 12 21 5;6802 15 24 5;6803 17 26 5;6804 20 32 7;6805 25 37 7;6806 30 42 7
        6900 10 22 6;6901 12 24 6;6902 15 28 7;6903 17 30 7;6904 20 37 9;6905 25 42 9;6906 30 47 9;6907 35 55 10;6908 40 62 12;16002 15 32 8;16004 20 42 8;16005 25 47 8;16100 10 28 8
        16101 12 30 8;623 3 10 4;684 4 9 2.5;694 4 11 4;604 4 12 4;624 4 13 5;634 4 16 5;685 5 11 3;695 5 13 4;625 5 16 5;686 6 13 3.5;696 6 15 5;626 6 19 6;687 7 14 3.5;697 7 17 5
        607 7 19 6;627 7 22 7;688 8 16 4;698 8 19 6;628 8 24 8;689 9 17 4;699 9 20 6;609 9 24 7;6300 10 35 11;6808 40 52 7;MR63ZZ 3 6 2.5;MR85ZZ 5 8 2.5;MR93ZZ 3 9 4;MR95ZZ 5 9 3
        """.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(t => t.Split(' '))
        .ToDictionary(c => c[0], c => (Number(c[1]), Number(c[2]), Number(c[3])), StringComparer.Ordinal);

    internal static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static List<IReadOnlyDictionary<string, string>> Load(string name)
    {
        var rows = File.ReadLines(Path.Combine(Repository.Root, "tests", "Crossref.Core.Tests", "Arithmetic", "Reference", name))
            .Where(l => l.Length > 0 && l[0] != '#').Select(EmbeddedTable.Cells).ToList();
        return [.. rows.Skip(1).Select(r => (IReadOnlyDictionary<string, string>)rows[0].Zip(r).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal))];
    }
}
