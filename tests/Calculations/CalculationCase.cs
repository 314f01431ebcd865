using System.Text;

namespace Crossref.Calculations;

/// <summary>
/// One case of the table that drives the calculators' tests: what is written, and figures that must come out. The command
/// and the page are held against the same cases. A file of cases reads so:
/// <code>
/// # where the figures come from
/// crossref gear --teeth 32 --tip 34
///   module: 1 mm
///   answer has: module 1
/// </code>
/// A line is "what: figure" and must come out as it stands; "answer has", "caution has" and "refused has" ask for a piece of text.
/// </summary>
public sealed record CalculationCase(string File, int Line, string Source, string Calculator, IReadOnlyDictionary<string, string> Inputs, IReadOnlyList<(string What, string Figure)> Expected)
{
    /// <summary>Every case of every file in the folder beside this one.</summary>
    public static IReadOnlyList<CalculationCase> All(string repository) =>
        [.. Directory.EnumerateFiles(Path.Combine(repository, "tests", "Calculations"), "*.txt").Order(StringComparer.Ordinal).SelectMany(Read)];

    /// <summary>The command line without the program's name.</summary>
    public IReadOnlyList<string> Arguments { get; private init; } = [];

    /// <summary>Where the case stands.</summary>
    public override string ToString() => $"{Path.GetFileName(File)}:{Line} {Calculator} {string.Join(' ', Inputs.Select(i => $"{i.Key}={i.Value}"))}";

    private static IEnumerable<CalculationCase> Read(string file)
    {
        var (source, found, number, fresh) = ("", new List<CalculationCase>(), 0, false);
        foreach (var line in System.IO.File.ReadLines(file))
        {
            number++;
            if (line.StartsWith('#')) (source, fresh) = (fresh ? source + " " + line[1..].Trim() : line[1..].Trim(), true);
            else if (line.StartsWith("crossref ", StringComparison.Ordinal))
            {
                var words = Words(line).Skip(1).ToList();
                found.Add(new CalculationCase(file, number, source, words[0], Given(words), new List<(string, string)>()) { Arguments = words });
                fresh = false;
            }
            else if (line.Trim().Length > 0)
            {
                var colon = line.IndexOf(": ", StringComparison.Ordinal);
                if (colon < 0 || found.Count == 0) throw new FormatException($"{file}:{number}: write 'what: figure' below a command");
                ((List<(string, string)>)found[^1].Expected).Add((line[..colon].Trim(), line[(colon + 2)..].Trim()));
            }
        }
        return found;
    }

    // The argument without a name goes under "".
    private static Dictionary<string, string> Given(List<string> words)
    {
        var inputs = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 1; i < words.Count; i++)
        {
            if (words[i].StartsWith("--", StringComparison.Ordinal)) inputs[words[i][2..]] = words[++i];
            else inputs[""] = words[i];
        }
        return inputs;
    }

    // Words as a shell takes them apart: double quotes keep spaces.
    private static List<string> Words(string line)
    {
        var (words, word, quoted, begun) = (new List<string>(), new StringBuilder(), false, false);
        foreach (var c in line)
        {
            if (c == '"') (quoted, begun) = (!quoted, true);
            else if (c == ' ' && !quoted)
            {
                if (begun) words.Add(word.ToString());
                word.Clear();
                begun = false;
            }
            else
            {
                word.Append(c);
                begun = true;
            }
        }
        if (begun) words.Add(word.ToString());
        return words;
    }
}
