using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>Looks for parts on record that may be the one somebody holds, by the sizes that are known of it.</summary>
public static class SizeSearch
{
    /// <summary>
    /// Parts of the kind of which no size in question differs and one agrees at least: those with the most agreeing sizes
    /// first, then those with the most sizes on record, then by id.
    /// </summary>
    public static IReadOnlyList<FoundPart> Find(Library library, PartKind kind, IReadOnlyDictionary<string, Size> sizes) =>
    [
        .. from part in library.Parts.Values.OrderBy(p => p.Id, StringComparer.Ordinal)
           where part.Kind == kind && !part.Retired
           let known = SizeBook.Of(part)
           let compared = kind.Deciding.Where(sizes.ContainsKey)
               .Select(a => SizeBook.Compare(kind, a, new KnownSize(sizes[a], SizeOrigin.Written), known.TryGetValue(a, out var size) ? size : null)).ToList()
           let agreeing = compared.Count(c => c.Agreement == Agreement.Agrees)
           where agreeing > 0 && compared.TrueForAll(c => c.Agreement != Agreement.Differs)
           orderby agreeing descending, known.Count descending
           select new FoundPart(part.Id, compared),
    ];
}
