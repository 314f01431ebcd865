using System.Diagnostics;
using System.Globalization;
using Crossref.Core.Lookup;
using Crossref.Core.Tests.Lookup.AtSize;
using Crossref.Core.Tests.Lookup.FullText;

namespace Crossref.Benchmarks;

/// <summary>
/// What looking up costs, beside a plain scan of all entries and, for words, beside a full-text library, all in one run.
/// The index lies in files, as on a shop's disk. A query meets a reader that was just opened, as on the command line, and
/// then one that has been answering for a while; the other two hold everything in memory.
/// </summary>
internal static class LookupBenchmark
{
    private const int Asked = 60;

    /// <summary>Measures a library of about so many entries and prints a table.</summary>
    public static void Run(int count)
    {
        // A third as many again as parts are positions and the like.
        var entries = LargeLibrary.Entries(count * 10 / 13);
        Console.WriteLine($"\n| {entries.Count} entries | ours, ms | ours kept open, ms | plain scan, ms | full-text library, ms |\n|-|-|-|-|-|");
        var folder = Directory.CreateTempSubdirectory("crossref-benchmark-").FullName;
        try
        {
            var (files, built) = Timed(() => LookupIndex.Build(entries));
            var (scan, prepared) = Timed(() => new PlainScan(entries));
            var (texts, folded) = Timed(() => entries.Select(Words).ToArray());
            var (fullText, indexed) = Timed(() => new FullTextIndex(entries));
            using var other = fullText;
            Line("build", built, null, prepared + folded, indexed);
            Write(files, folder);
            LookupReader Open() => new(path => File.ReadAllText(Path.Combine(folder, path)));
            Line("open the reader", Median(Enumerable.Range(0, Asked), _ => Open()), null, null, null);
            var kept = Open();

            var parts = entries.Where(entry => entry.Type == "part").ToArray();
            foreach (var (sort, text, scanned) in Numbers(scan))
            {
                var random = new Random(3);
                var queries = Enumerable.Range(0, Asked).Select(_ => text(random, parts[random.Next(parts.Length)].Numbers[0].Text)).ToArray();
                Line(
                    sort,
                    Median(queries, query => Open().Find(new LookupQuery(query))),
                    Median(queries, query => kept.Find(new LookupQuery(query))),
                    Median(queries, query => scanned(PlainScan.Form(query)).Count()),
                    null);
            }

            var words = LargeQueries.Of(entries, 24 * Asked, 3).Where(asked => asked.Sort == "words").Select(asked => asked.Query.Text).ToArray();
            Line(
                "two words",
                Median(words, query => Open().Find(new LookupQuery(query))),
                Median(words, query => kept.Find(new LookupQuery(query))),
                Median(words, query => TextFold.Words(query).ToArray() is var typed ? texts.Count(its => typed.All(its.Contains)) : 0),
                Median(words, query => other.Find(TextFold.Words(query), 50)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (string Sort, Func<Random, string, string> Text, Func<string, IEnumerable<LookupEntry>> Scan)[] Numbers(PlainScan scan) =>
    [
        ("exact number", (_, number) => number, scan.Exact),
        ("beginning of a number", (random, number) => number[..random.Next(3, number.Length)], scan.Starting),
        ("middle of a number", Mistyping.Middle, scan.Containing),
        ("number with a slip", (random, number) => Mistyping.Slip(random, number, "other"), scan.OneSlip),
    ];

    private static HashSet<string> Words(LookupEntry entry) =>
        [.. TextFold.Words($"{entry.Title} {string.Join(' ', entry.Aliases)} {entry.Detail} {entry.Id} {entry.Type} {entry.Kind} {string.Join(' ', entry.Families)} {entry.Text}")];

    private static void Write(LookupFiles files, string folder)
    {
        foreach (var file in files)
        {
            var path = Path.Combine(folder, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, file.Text);
        }
    }

    private static (T Result, double Milliseconds) Timed<T>(Func<T> act)
    {
        var clock = Stopwatch.StartNew();
        var result = act();
        return (result, clock.Elapsed.TotalMilliseconds);
    }

    private static double Median<TIn, TOut>(IEnumerable<TIn> inputs, Func<TIn, TOut> act)
    {
        var all = inputs.ToArray();
        act(all[0]); // compiles what the first call would
        double[] times = [.. all.Select(input => Timed(() => act(input)).Milliseconds).Order()];
        return times[times.Length / 2];
    }

    private static void Line(string what, double? ours, double? kept, double? scan, double? fullText)
    {
        string Text(double? value) => value?.ToString("0.00", CultureInfo.InvariantCulture) ?? "";
        Console.WriteLine($"| {what} | {Text(ours)} | {Text(kept)} | {Text(scan)} | {Text(fullText)} |");
    }
}
