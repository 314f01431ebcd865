using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Tests.Planting;

/// <summary>
/// A value of a document in a form that can be changed and written again: a single value as it is written, with its
/// quotes if it has any; the keys of a map; or the rows of a list.
/// </summary>
internal sealed class Item
{
    internal string? Raw { get; set; }
    internal List<Entry>? Keys { get; set; }
    internal List<Item>? Rows { get; set; }

    /// <summary>What stands before a map or a list, such as an anchor.</summary>
    internal string Before { get; set; } = "";

    /// <summary>The line that it begins in, when it was last written.</summary>
    internal int Line { get; set; }

    internal static Item Of(Node node) => node switch
    {
        MapNode map => new Item { Keys = [.. map.Entries.Select(e => new Entry(e.Key, Of(e.Value)))] },
        ListNode list => new Item { Rows = [.. list.Items.Select(Of)] },
        ScalarNode scalar => new Item { Raw = Written(scalar.Text) },
        _ => throw new InvalidOperationException($"{node.Place} cannot be written again."),
    };

    /// <summary>Another item that says the same.</summary>
    internal Item Copy() => new()
    {
        Raw = Raw, Before = Before, Keys = Keys?.ConvertAll(e => new Entry(e.Key, e.Value.Copy())), Rows = Rows?.ConvertAll(r => r.Copy()),
    };

    internal Entry this[string key] => Keys!.Single(e => e.Key == key);

    /// <summary>The item at the end of a path such as <c>fitted/0/from</c>.</summary>
    internal Item At(string path) => path.Split('/', StringSplitOptions.RemoveEmptyEntries)
        .Aggregate(this, (item, step) => item.Rows is { } rows ? rows[int.Parse(step)] : item[step].Value);

    // Quoted unless it is so plain that nothing can be made of it but itself.
    private static string Written(string text) =>
        text.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '/' or '.' or ',' or '?' or '+') && text[0] is not ('-' or '?' or ',') ? text : $"\"{text}\"";
}

/// <summary>A key and its value.</summary>
internal sealed class Entry(string key, Item value)
{
    internal string Key { get; set; } = key;
    internal Item Value { get; set; } = value;

    /// <summary>What stands before it in its line; null for the spaces that belong there.</summary>
    internal string? Indent { get; set; }

    /// <summary>The line of the key, when it was last written.</summary>
    internal int Line { get; set; }
}
