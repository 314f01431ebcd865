using Crossref.Core.Arithmetic;
using Crossref.Core.Interchange;
using Crossref.Core.Lookup;
using Crossref.Core.Records;
using Crossref.Site.Pages.Calculation;

namespace Crossref.Site.Pages;

/// <summary>Everything of a library that can be looked up, with the page it leads to.</summary>
public static class LookupEntries
{
    /// <summary>The entries of a library. Parts and positions carry their best standing, which takes every position's answer.</summary>
    /// <param name="library">The library.</param>
    /// <param name="map">Where its pages live.</param>
    /// <param name="answers">What fits every position, without a machine, when that is known already.</param>
    public static IEnumerable<LookupEntry> Of(Library library, PageMap map, IReadOnlyList<FitsAnswer>? answers = null)
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(map);
        var entries = new LookupEntryMaker(library, map, answers ?? Answers(library));
        return library.Positions.Values.Select(entries.Of)
            .Concat(library.Assemblies.Values.Select(entries.Of))
            .Concat(library.Records.Values.Select(entries.Of).OfType<LookupEntry>())
            .Concat(Calculators.All.Select(Of));
    }

    private static LookupEntry Of(Calculator calculator) => new()
    {
        Type = "calculator",
        Id = calculator.Name,
        Title = calculator.Title,
        Page = PageMap.Of(calculator),
        Detail = calculator.Purpose,
        Text = string.Join(' ', [.. calculator.Inputs.Select(i => i.Label), .. BenchQuestions.Of(calculator.Name).Select(q => q.Question)]),
    };

    private static IReadOnlyList<FitsAnswer> Answers(Library library)
    {
        var fits = new Fits(library);
        return [.. library.Positions.Keys.Order(StringComparer.Ordinal).Select(position => fits.At(position))];
    }
}
