using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Records;

namespace Crossref.Core.Sizes;

/// <summary>
/// The sizes of every part, written ones and those that follow from a designation, and how parts compare. Keeps what it
/// has compared; not for several threads.
/// </summary>
public sealed class SizeBook(Library library)
{
    private static readonly IReadOnlyDictionary<string, KnownSize> Nothing = new Dictionary<string, KnownSize>();
    private readonly Dictionary<string, IReadOnlyDictionary<string, KnownSize>> _sizes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<string>> _same = new(StringComparer.Ordinal);
    private readonly Dictionary<PartKind, SizeIndex> _indexes = [];

    /// <summary>The sizes of a part by attribute; what somebody wrote goes before what a designation says.</summary>
    public IReadOnlyDictionary<string, KnownSize> Of(string part)
    {
        if (_sizes.TryGetValue(part, out var sizes)) return sizes;
        return _sizes[part] = library.Parts.TryGetValue(part, out var record) ? Of(record) : Nothing;
    }

    /// <summary>The sizes of a part that need no library.</summary>
    public static IReadOnlyDictionary<string, KnownSize> Of(Part part)
    {
        var sizes = part.Sizes.ToDictionary(s => s.Key, s => new KnownSize(s.Value, SizeOrigin.Written), StringComparer.Ordinal);
        foreach (var (attribute, size) in FromDesignation(part)) sizes.TryAdd(attribute, new KnownSize(size, SizeOrigin.Designation));
        return sizes;
    }

    /// <summary>A part with the sizes of its designation filled in.</summary>
    public static Part Filled(Part part) =>
        FromDesignation(part).Count == 0 ? part : part with { Sizes = Of(part).ToDictionary(s => s.Key, s => s.Value.Size, StringComparer.Ordinal) };

    /// <summary>What a part's designation says of its sizes; nothing when it has none, or none that is known.</summary>
    public static IReadOnlyDictionary<string, Size> FromDesignation(Part part) =>
        Designation(part) is { } bearing ? BearingSizes.Of(bearing) : Records.Nothing.Sizes;

    private static BearingDesignation? Designation(Part part) =>
        part.Kind.Name == "bearing" && part.Standard is { } standard ? BearingDesignation.Read(standard) : null;

    /// <summary>
    /// Sizes in which what is written of a part contradicts its designation: what is written first. A number that marks no
    /// clearance or closure says less than whoever looked, so its silence contradicts nobody.
    /// </summary>
    public static IReadOnlyList<SizeComparison> Contradictions(Part part)
    {
        if (part.Sizes.Count == 0 || Designation(part) is not { } bearing) return [];
        return
        [
            .. from said in BearingSizes.Of(bearing)
               where part.Sizes.ContainsKey(said.Key)
               where said.Key != "clearance" || bearing.ClearanceWritten
               where said.Key != "shields" || said.Value.Text != "open"
               let compared = Compare(part.Kind, said.Key, new KnownSize(part.Sizes[said.Key], SizeOrigin.Written), new KnownSize(said.Value, SizeOrigin.Designation))
               where compared.Agreement == Agreement.Differs
               select compared,
        ];
    }

    /// <summary>Two parts, attribute by attribute, over what decides for the first one's kind.</summary>
    public IReadOnlyList<SizeComparison> Compare(string one, string other)
    {
        var kind = library.Parts[one].Kind;
        var (first, second) = (Of(one), Of(other));
        return [.. kind.Deciding.Select(attribute => Compare(kind, attribute, Get(first, attribute), Get(second, attribute)))];
    }

    /// <summary>Parts of the same kind of which every deciding size is known and agrees, in order of id; itself and retired ones left out.</summary>
    public IReadOnlyList<string> SameAs(string part)
    {
        if (_same.TryGetValue(part, out var same)) return same;
        var kind = library.Parts[part].Kind;
        if (!_indexes.TryGetValue(kind, out var index)) _indexes[kind] = index = new SizeIndex(kind, library, this);
        return _same[part] = [.. index.Near(part).Where(other => other != part && Compare(part, other).All(c => c.Agreement == Agreement.Agrees)).Order(StringComparer.Ordinal)];
    }

    /// <summary>The attributes that must match and are known to differ from every one of some parts.</summary>
    public IReadOnlyList<string> Mismatches(string part, IReadOnlyList<string> listed)
    {
        if (listed.Count == 0) return [];
        var kind = library.Parts[part].Kind;
        var sizes = Of(part);
        return [.. kind.MustMatch.Where(attribute => listed.All(other =>
            Compare(kind, attribute, Get(sizes, attribute), Get(Of(other), attribute)).Agreement == Agreement.Differs))];
    }

    /// <summary>One attribute of two parts of a kind.</summary>
    public static SizeComparison Compare(PartKind kind, string attribute, KnownSize? one, KnownSize? other)
    {
        var mustMatch = kind.MustMatch.Contains(attribute);
        if (one is not { } first || other is not { } second) return new SizeComparison(attribute, one, other, Agreement.Unknown, mustMatch, "");
        if (first.Size.Quantity is not { } a || second.Size.Quantity is not { } b)
            return new SizeComparison(attribute, one, other, Decide(SizeWord.Same(attribute, first.Size.Text, second.Size.Text)), mustMatch, "must be the same word");
        var tolerance = WorkingTolerance.Of(kind, attribute, (double)Math.Max(a.Value, b.Value));
        var measuring = Math.Sqrt(Square(a.Uncertainty) + Square(b.Uncertainty));
        var apart = Math.Abs((double)a.Value - (double)b.Value);
        var (allowed, how) = measuring > tolerance.Width ? (measuring, "measuring uncertainty") : (tolerance.Width, tolerance.Reason);
        return new SizeComparison(attribute, one, other, Decide(apart <= allowed + BinaryRounding), mustMatch, how);
    }

    // What is left of decimal figures after binary arithmetic; far below anything that can be measured.
    private const double BinaryRounding = 1e-9;

    private static double Square(decimal value) => (double)value * (double)value;

    private static Agreement Decide(bool same) => same ? Agreement.Agrees : Agreement.Differs;

    private static KnownSize? Get(IReadOnlyDictionary<string, KnownSize> sizes, string attribute) =>
        sizes.TryGetValue(attribute, out var size) ? size : null;
}
