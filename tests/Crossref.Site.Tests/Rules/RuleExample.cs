namespace Crossref.Site.Tests.Rules;

/// <summary>One example of a rules document: the records it adds to the document's shop, and its questions with their answers.</summary>
internal sealed record RuleExample(string Name, int Line, string Shop, string Records, IReadOnlyList<string> Asked)
{
    /// <summary>Reads a document: fenced blocks <c>yaml shop</c>, <c>yaml</c> and <c>ask</c> under second-level headings.</summary>
    public static IReadOnlyList<RuleExample> Read(string file)
    {
        var examples = new List<RuleExample>();
        var (shop, name, records, asked, line) = ("", "", "", new List<string>(), 0);
        string? block = null;
        var number = 0;
        foreach (var text in File.ReadLines(file).Append("## end"))
        {
            number++;
            if (text.StartsWith("## ", StringComparison.Ordinal))
            {
                if (name.Length > 0) examples.Add(new RuleExample(name, line, shop, records, asked));
                (name, line, records, asked) = (text[3..], number, "", []);
            }
            else if (text.StartsWith("```", StringComparison.Ordinal)) block = block is null ? text[3..] : null;
            else if (block == "yaml shop") shop += text + "\n";
            else if (block == "yaml") records += text + "\n";
            else if (block == "ask") asked.Add(text);
        }
        return examples;
    }

    public override string ToString() => Name;
}
