using System.Globalization;
using Crossref.Benchmarks;

if (args is not ["lookup", .. var counts])
{
    Console.Error.WriteLine("Say what to measure: lookup [ENTRIES ...]");
    return 2;
}

foreach (var count in counts.Length == 0 ? [10_000, 100_000] : counts.Select(text => int.Parse(text, CultureInfo.InvariantCulture)))
{
    LookupBenchmark.Run(count);
}

return 0;
