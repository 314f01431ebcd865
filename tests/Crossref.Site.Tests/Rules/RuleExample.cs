namespace Crossref.Site.Tests.Rules;

/// <summary>One example of a rules document: the records it adds to the document's shop, and its questions with their answers.</summary>
internal sealed record RuleExample(string Name, int Line, string Shop, string Records, IReadOnlyDictionary<string, string> Files, IReadOnlyList<string> Asked)
{
    /// <summary>
    /// Reads a document: fenced blocks <c>yaml shop</c>, <c>yaml</c>, <c>yaml from/mill</c> (a folder of its own) and <c>ask</c>
    /// under second-level headings. <c>yaml confirmed</c> goes into the shop's own document.
    /// </summary>
    public static IReadOnlyList<RuleExample> Read(string file)
    {
        var examples = new List<RuleExample>();
        var (shop, name, records, asked, line) = ("", "", "", new List<string>(), 0);
        var files = new Dictionary<string, string>();
        string? block = null;
        var number = 0;
        foreach (var text in File.ReadLines(file).Append("## end"))
        {
            number++;
            if (text.StartsWith("## ", StringComparison.Ordinal))
            {
                if (name.Length > 0) examples.Add(new RuleExample(name, line, shop.Insert(shop.IndexOf('\n', StringComparison.Ordinal) + 1, files.GetValueOrDefault("confirmed", "")), records, files, asked));
                (name, line, records, files, asked) = (text[3..], number, "", [], []);
            }
            else if (text.StartsWith("```", StringComparison.Ordinal)) block = block is null ? text[3..] : null;
            else if (block == "yaml shop") shop += text + "\n";
            else if (block == "yaml") records += text + "\n";
            else if (block?.StartsWith("yaml ", StringComparison.Ordinal) == true) files[block[5..]] = files.GetValueOrDefault(block[5..]) + text + "\n";
            else if (block == "ask") asked.Add(text);
        }
        return examples;
    }

    public override string ToString() => Name;
}
