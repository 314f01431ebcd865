using Crossref.Core.Arithmetic;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages;
using Crossref.Site.Pages.Calculation;

namespace Crossref.Browser.Tests.Arithmetic;

/// <summary>Parts whose sizes are those looked for, or just inside, just at and just outside of what still counts as the same.</summary>
internal static class NearParts
{
    private static readonly double[] Off = [0, 0, 0, 0.3, 0.999999, 1, 1.000001, 1.5];

    private static readonly string[] Words = ["none", " None", "left", "right", "2Z", "ZZ", "open", "13.2", "13.20 mm", "flat-blade", "Flat-Blade", "Spieß", "CN"];

    internal static Library Library(IEnumerable<Sought> sought, int seed)
    {
        var random = new Random(seed);
        var place = new Place("x.yaml", 1, 1);
        return new Library(
            new LibraryRecord { Id = "near", Place = place, Title = "Near" },
            [.. sought.Select((s, i) => new Part
            {
                Id = $"part-{i:0000}", Place = place, Kind = s.Kind, Name = $"Part {i}", Retired = random.Next(12) == 0, Safety = random.Next(5) == 0,
                Sizes = s.Kind.Deciding.Where(_ => random.Next(4) > 0).Select(a => (a, Size: Near(s, a, random))).Where(x => x.Size is not null).ToDictionary(x => x.a, x => x.Size!),
            })]);
    }

    /// <summary>The parts as the script for the page lists them.</summary>
    internal static string Listed(Library library, PartKind kind)
    {
        var script = PartsScript.Of(new Desk(library, new SiteOptions(new DateOnly(2026, 11, 25)), new PageMap(library)), kind).AsText();
        return script[script.IndexOf('[', StringComparison.Ordinal)..].TrimEnd('\n', ';');
    }

    private static Size? Near(Sought sought, string attribute, Random random)
    {
        if (SizeName.Find(attribute)!.Measures is null)
            return new Size(sought.Sizes.TryGetValue(attribute, out var word) && random.Next(2) > 0 ? word.Text : Words[random.Next(Words.Length)], null);
        if (!sought.Sizes.TryGetValue(attribute, out var size) || size.Quantity is not { Value: < 1_000_000_000 } quantity) return null;
        var width = Math.Max(WorkingTolerance.Of(sought.Kind, attribute, (double)quantity.Value).Width, (double)quantity.Uncertainty);
        var value = quantity.Value + (decimal)(width * Off[random.Next(Off.Length)] * (random.Next(2) * 2 - 1));
        var near = quantity with { Value = value, Uncertainty = random.Next(3) > 0 ? 0 : quantity.Uncertainty / random.Next(1, 4) };
        return new Size(near.ToString(), near);
    }
}
