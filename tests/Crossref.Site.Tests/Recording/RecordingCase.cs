using System.Globalization;

namespace Crossref.Site.Tests.Recording;

/// <summary>One example of <c>tests/Recording</c>: what was filled in, and the file that it gives.</summary>
internal sealed record RecordingCase(string Name, string Library, DateOnly Date, IReadOnlyDictionary<string, string> Fields, string Text)
{
    internal static IReadOnlyList<RecordingCase> All { get; } = [.. Directory.GetFiles(Path.Combine(Repository.Root, "tests", "Recording"), "*.txt").Order(StringComparer.Ordinal).SelectMany(Read)];

    private static IEnumerable<RecordingCase> Read(string file) =>
        File.ReadAllText(file).Split("\n====\n").Skip(1).Select(c =>
        {
            var (head, text) = (c[..c.IndexOf("\n----\n", StringComparison.Ordinal)].Split('\n'), c[(c.IndexOf("\n----\n", StringComparison.Ordinal) + 6)..]);
            var fields = head.Skip(1).ToDictionary(l => l[..l.IndexOf(" = ", StringComparison.Ordinal)], l => l[(l.IndexOf(" = ", StringComparison.Ordinal) + 3)..], StringComparer.Ordinal);
            var (library, date) = (fields["(library)"], DateOnly.Parse(fields["(date)"], CultureInfo.InvariantCulture));
            return new RecordingCase(head[0], library, date, fields.Where(f => f.Key[0] != '(').ToDictionary(), text.TrimEnd('\n') + "\n");
        });
}
