using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>
/// The parts of one kind of which every deciding size is known, by the first size that is a number. Most pairs differ
/// there, so that only a few have to be compared in full.
/// </summary>
internal sealed class SizeIndex
{
    private readonly string? _attribute;
    private readonly PartKind _kind;
    private readonly SizeBook _book;
    private readonly (double Value, double From, string Part)[] _parts;
    private readonly double _doubt;

    internal SizeIndex(PartKind kind, Library library, SizeBook book)
    {
        (_kind, _book) = (kind, book);
        var known = library.Parts.Values.Where(p => p.Kind == kind && !p.Retired && IsComplete(p.Id)).Select(p => p.Id).ToList();
        _attribute = kind.Deciding.FirstOrDefault(a => SizeName.Find(a)?.Measures is not null);
        _parts = [.. known.Select(id => (Value: ValueOf(id), From: 0.0, Part: id)).OrderBy(p => p.Value)];
        // The larger of two values sets the tolerance, so each part says how far down it reaches; From, how far any from here on does.
        var from = double.PositiveInfinity;
        for (var i = _parts.Length - 1; i >= 0; i--) _parts[i].From = from = Math.Min(from, _parts[i].Value - ToleranceAt(_parts[i].Value));
        _doubt = known.Count == 0 ? 0 : known.Max(DoubtOf);
    }

    /// <summary>Every part that may agree with one, itself among them; nothing unless every deciding size of it is known.</summary>
    internal IEnumerable<string> Near(string part)
    {
        if (!IsComplete(part)) return [];
        var (value, doubt) = (ValueOf(part), DoubtOf(part));
        var reach = Math.Sqrt(doubt * doubt + _doubt * _doubt);
        var lowest = value - Math.Max(reach, ToleranceAt(value)) - Rounding;
        return _parts.Skip(FirstFrom(lowest)).TakeWhile(p => Math.Min(p.Value - reach, p.From) <= value + Rounding).Select(p => p.Part);
    }

    // More than binary rounding makes of any size on record.
    private const double Rounding = 1e-6;

    private int FirstFrom(double value)
    {
        var (low, high) = (0, _parts.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_parts[middle].Value < value) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    private bool IsComplete(string part) => _kind.Deciding.Count > 0 && _kind.Deciding.All(_book.Of(part).ContainsKey);

    private double ToleranceAt(double value) => _attribute is null ? 0 : WorkingTolerance.Of(_kind, _attribute, value).Width;

    private double ValueOf(string part) => Of(part) is { } quantity ? (double)quantity.Value : 0;

    private double DoubtOf(string part) => Of(part) is { } quantity ? (double)quantity.Uncertainty : 0;

    private Quantities.Quantity? Of(string part) => _attribute is null ? null : _book.Of(part)[_attribute].Size.Quantity;
}
