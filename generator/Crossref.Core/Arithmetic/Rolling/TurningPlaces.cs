using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Rolling;

/// <summary>Finds the positions that turn against the sheet.</summary>
internal static class TurningPlaces
{
    /// <summary>
    /// Every position with a diameter on record; also rollers and belts without one, when every part that the maker's list
    /// names there has its size on record. By address.
    /// </summary>
    internal static IReadOnlyList<TurningPlace> Of(Library library) =>
    [
        .. library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal).Select(p => Of(library, p)).OfType<TurningPlace>(),
    ];

    private static TurningPlace? Of(Library library, Position position)
    {
        TurningPlace Place(Interval around, string because) =>
            new(position.Address, $"{position.Name}, {library.Families[position.Family].Name}", position.Family, around, because);
        if (position.Diameter is { } diameter) return Place(Repeat.Around(Interval.Of(diameter)), $"{Figure.Of(Interval.Of(diameter), 2, "mm")} across, on record");

        var (attribute, word) = position.Kind.Name switch { "roller" => ("outside", "across"), "belt" => ("circumference", "around"), _ => ("", "") };
        if (attribute.Length == 0 || position.Listed.Count == 0) return null;
        Interval? all = null;
        foreach (var listing in position.Listed)
        {
            // One listed part of unknown size leaves the place unknown, since any of them may be in it.
            if (library.Parts.GetValueOrDefault(listing.Part.Id)?.Sizes.GetValueOrDefault(attribute)?.Quantity is not { } size) return null;
            var one = Interval.Of(size);
            all = all is { } others ? new(Math.Min(others.Low, one.Low), Math.Max(others.High, one.High)) : one;
        }
        var known = all!.Value;
        return Place(word == "across" ? Repeat.Around(known) : known, $"{Figure.Of(known, 2, "mm")} {word}, by {string.Join(" or ", position.Listed.Select(l => l.Part.Id).Distinct())}");
    }
}
