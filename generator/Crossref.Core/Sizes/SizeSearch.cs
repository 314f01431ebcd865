using Crossref.Core.Arithmetic;
using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>Looks for parts on record that may be the one somebody holds, by the sizes that are known of it.</summary>
public static class SizeSearch
{
    /// <summary>
    /// Parts of the kind of which no size in question differs and one agrees at least: those with the most agreeing sizes
    /// first, then those with the most sizes on record, then by id.
    /// </summary>
    public static IReadOnlyList<FoundPart> Find(Library library, Sought sought) =>
    [
        .. from part in library.Parts.Values.OrderBy(p => p.Id, StringComparer.Ordinal)
           where part.Kind == sought.Kind && !part.Retired
           let known = SizeBook.Of(part)
           let compared = sought.Kind.Deciding.Where(sought.Sizes.ContainsKey)
               .Select(a => SizeBook.Compare(sought.Kind, a, new KnownSize(sought.Sizes[a], SizeOrigin.Written), known.TryGetValue(a, out var size) ? size : null))
               .Select(c => c.Attribute == sought.Doubtful && c.Agreement == Agreement.Agrees ? c with { Agreement = Agreement.Unknown } : c).ToList()
           let agreeing = compared.Count(c => c.Agreement == Agreement.Agrees)
           where agreeing > 0 && compared.TrueForAll(c => c.Agreement != Agreement.Differs)
           orderby agreeing descending, known.Count descending
           select new FoundPart(part.Id, compared),
    ];
}
