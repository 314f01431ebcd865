using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Tests.Sharing;

/// <summary>Random edits of a record's text, such as a person makes.</summary>
/// <param name="random">What decides.</param>
/// <param name="hasComments">Whether comments are written too.</param>
internal sealed class Edits(Random random, bool hasComments = true)
{
    internal const string Family =
        """
        # The folders by the door
        family: ostrin-f2
        name: Ostrin F2 folders
        maker: Ostrin
        assemblies:
          - assembly: feed
            name: Suction feed
            positions:
              # the wide ones
              - position: suction-belt
                name: Suction belts
                kind: belt
                listed: [blt-os-0820]
                locator: p. 22, item 5
              - position: feed-wheel
                name: Feed wheel
                kind: roller
          - assembly: fold-head
            name: Fold head
            note: Unplug, and turn by hand only.
            positions:
              - position: roller-1
                name: First fold roller
                kind: roller
                orientation:
                  hub: inboard
        # measured in spring
        note: Plain number serials.

        """;

    private static readonly string[] Optional = ["role", "quantity", "diameter", "note", "locator", "source"];

    /// <summary>The text after a few edits.</summary>
    internal string Edit(string text, int number)
    {
        for (var i = 0; i < number; i++)
        {
            var outline = OutlineReader.Record(text);
            text = (outline with { Entries = Edit(outline.Entries, 0) }).Text;
        }
        return text;
    }

    // Goes down at random until it meets the place to edit.
    private List<Entry> Edit(IReadOnlyList<Entry> entries, int depth)
    {
        var list = entries.ToList();
        var at = random.Next(list.Count);
        var entry = list[at];
        if (entry.Children.Count > 0 && random.Next(4) > 0)
        {
            list[at] = entry with { Children = Edit(entry.Children, depth + 1) };
            return list;
        }
        var isList = entry.Key[0] is '-';
        var isHead = depth == 0 && at == 0;
        switch (random.Next(7))
        {
            case 0 when entry.Key[0] == '=' && !isHead:
                list[at] = entry with { Text = $"{entry.Key[1..]}: {Word()}\n" };
                break;
            case 1 when !isHead && list.Count > 1:
                list.RemoveAt(at);
                break;
            case 2 when isList:
                var name = "extra-" + random.Next(4);
                if (list.All(e => e.Key != "-" + name)) list.Insert(random.Next(list.Count + 1), new Entry("-" + name, "", $"- {(depth == 1 ? "assembly" : "position")}: {name}\n", 2, [new Entry("=name", "", $"name: {Word()}\n", 0, [])]));
                break;
            case 2 or 3 when !isList:
                var key = Optional[random.Next(Optional.Length)];
                if (list.All(e => e.Key != "=" + key)) list.Insert(random.Next(depth == 0 ? 1 : 0, list.Count + 1), new Entry("=" + key, "", $"{key}: {Word()}\n", 0, []));
                break;
            case 4 when hasComments:
                list[at] = entry with { Lead = $"# {Word()}\n" };
                break;
            case 5 when !isHead && list.Count > 2:
                var to = random.Next(depth == 0 ? 1 : 0, list.Count - 1);
                list.RemoveAt(at);
                list.Insert(to, entry);
                break;
            case 6 when !isList && list.All(e => e.Key != "=retired"):
                list.Add(new Entry("=retired", "", "retired: true\n", 0, []));
                break;
        }
        return list;
    }

    private string Word() => new[] { "red", "blue", "[a, b]", "\"a: b\"", "17 mm" }[random.Next(5)] + (hasComments && random.Next(3) == 0 ? " # so" : "");
}
