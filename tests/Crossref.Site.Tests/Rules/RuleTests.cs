using Crossref.Core.Checking;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Reading;

namespace Crossref.Site.Tests.Rules;

/// <summary>Runs the examples of the rules documents beside this file.</summary>
public sealed class RuleTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Rules");

    public static TheoryData<string, string> Examples()
    {
        var data = new TheoryData<string, string>();
        foreach (var file in Directory.GetFiles(Folder, "*.md").Order(StringComparer.Ordinal))
            foreach (var example in RuleExample.Read(file)) data.Add(Path.GetFileName(file), example.Name);
        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_answer_is_the_one_that_the_example_gives(string file, string name)
    {
        var example = RuleExample.Read(Path.Combine(Folder, file)).Single(e => e.Name == name);
        var library = Read(example);
        var questions = example.Asked.Where(l => !l.StartsWith(' ')).ToList();
        Assert.NotEmpty(questions);
        var fits = new Fits(library);
        var answered = questions.SelectMany(q => Answer(library, fits, q).Select(a => "  " + a).Prepend(q));
        Assert.Equal(string.Join('\n', example.Asked), string.Join('\n', answered));
    }

    [Fact]
    public void The_documents_hold_an_example_for_every_rule()
    {
        Assert.True(Examples().Count >= 40);
    }

    private static Library Read(RuleExample example)
    {
        var folder = Directory.CreateTempSubdirectory("rules");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "shop.yaml"), example.Shop);
            if (example.Records.Length > 0) File.WriteAllText(Path.Combine(folder.FullName, "example.yaml"), example.Records);
            foreach (var (path, text) in example.Files.Where(f => f.Key.StartsWith("from/", StringComparison.Ordinal)))
                File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(folder.FullName, path)).FullName, "theirs.yaml"), text);
            var read = ContentReader.Read(folder.FullName);
            Assert.DoesNotContain(read.Diagnostics.Select(DiagnosticText.Format), _ => true);
            return read.Library!;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static IEnumerable<string> Answer(Library library, Fits fits, string question)
    {
        var words = question.Split(' ');
        switch (words[0])
        {
            case "fits":
                var answer = fits.At(words[1], words is [_, _, "--machine", var machine] ? machine : null);
                return answer.Candidates.Select(Line)
                    .Concat(answer.Disputed.Select(d => $"{d.Part}: disputed"))
                    .Concat(answer.RuledOut.Select(r => $"{r.Part}: ruled out"));
            case "why" when words[1] == "not":
                return [fits.At(words[2], words is [_, _, _, _, "--machine", var asked] ? asked : null).RuledOut.Single(r => r.Part == words[3]).Reason];
            case "sizes":
                return fits.Sizes.Compare(words[1], words[2]).Select(c => $"{c.Attribute}: {Size(c.One)}, {Size(c.Other)}: {Words.Of(c.Agreement)}");
            case "why":
                return [fits.At(words[1]).Candidates.Single(c => c.Part == words[2]).Reason];
            case "house":
                return fits.House.Of(words[1]).Select(i =>
                    $"{i.Quantity} in {Words.Of(i.Holder)} {i.Id}{(i.Bin is null ? "" : ", " + i.Bin)}{(i.Grade is { } grade ? ", " + Words.Of(grade) : "")}");
            case "owed":
                return fits.House.Owed.Select(o =>
                    $"{o.Unit} {o.Position} {o.Part}{(o.TakenBy is { } repair ? ", taken by " + repair : "")}{(o.Order is { } order ? ", order " + order : "")}");
            default:
                throw new InvalidOperationException($"The example asks '{question}', which nobody can answer.");
        }
    }

    private static string Size(KnownSize? size) => size?.Size is { } known ? known.Quantity?.ToString() ?? known.Text : "unknown";

    private static string Line(Candidate candidate) =>
        $"{candidate.Part}: {candidate.Standing}" +
        (candidate.Accepted ? ", accepted" : "") +
        (candidate.Conditions.Count > 0 ? "; check first: " + string.Join(", ", candidate.Conditions) : "") +
        (candidate.Changes.Count > 0 ? "; change: " + string.Join(", ", candidate.Changes) : "");
}
