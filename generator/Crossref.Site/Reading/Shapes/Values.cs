using Crossref.Core.Checking;
using Crossref.Core.Quantities;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Short names for value shapes, so that the tables of keys read like the format itself.</summary>
internal static class Values
{
    /// <summary>The largest number that may be written: far beyond any, and no later sum overflows.</summary>
    internal const decimal Largest = 1_000_000_000;

    internal static ValueShape Text { get; } = new(ValueKind.Text);
    internal static ValueShape Id { get; } = new(ValueKind.Id);
    internal static ValueShape LocalAssembly { get; } = new(ValueKind.LocalAssembly);
    internal static ValueShape LocalPosition { get; } = new(ValueKind.LocalPosition) { Target = Target.Position };
    internal static ValueShape TrueFalse { get; } = new(ValueKind.TrueFalse);
    internal static ValueShape Date { get; } = new(ValueKind.Date);
    internal static ValueShape Life { get; } = new(ValueKind.Life);
    internal static ValueShape Wait { get; } = new(ValueKind.Wait);
    internal static ValueShape TextMap { get; } = new(ValueKind.TextMap);
    internal static ValueShape Sizes { get; } = new(ValueKind.Sizes);
    internal static ValueShape Volts { get; } = Quantity(Dimension.Voltage, 1);
    /// <summary>Of sheets, cycles or hours; hours may have a fraction on an hour meter, but are noted whole.</summary>
    internal static ValueShape Counted { get; } = Whole(0);
    internal static ValueShape Amount { get; } = Whole(1);

    internal static ValueShape Ref(Target target, params string[] words) => new(ValueKind.Reference) { Target = target, Words = words };

    internal static ValueShape Word(IEnumerable<string> words) => new(ValueKind.Word) { Words = [.. words] };

    internal static ValueShape Word<T>() where T : struct, Enum => Word(Core.Records.Words.All<T>());

    internal static ValueShape Open(IEnumerable<string> words) => new(ValueKind.OpenWord) { Words = [.. words] };

    internal static ValueShape Quantity(Dimension dimension, decimal least) => new(ValueKind.Quantity) { Dimension = dimension, Least = least };

    internal static ValueShape Number(decimal least = 0, decimal most = Largest) => new(ValueKind.Number) { Least = least, Most = most };

    internal static ValueShape Whole(decimal least) => new(ValueKind.Whole) { Least = least };

    internal static ValueShape List(ValueShape item) => new(ValueKind.List) { Item = item };

    internal static ValueShape Map(MapShape map) => new(ValueKind.Map) { Map = map };

    /// <summary>A map that may be shortened to the value of one of its keys.</summary>
    internal static ValueShape Map(MapShape map, string shortKey) => new(ValueKind.Map) { Map = map, Short = shortKey };

    internal static KeyShape Must(string name, ValueShape value, string says) => new(name, value, true, says);

    internal static KeyShape May(string name, ValueShape value, string says) => new(name, value, false, says);
}
