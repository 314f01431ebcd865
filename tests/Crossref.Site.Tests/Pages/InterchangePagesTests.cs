using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages;
using Crossref.Site.Reading;

namespace Crossref.Site.Tests.Pages;

/// <summary>The interchange tables and path figures say what the answers say; recomputed here cell by cell over the demo library.</summary>
public sealed class InterchangePagesTests
{
    private static readonly Library Demo = ContentReader.Read(Path.Combine(Repository.Root, "content")).Library!;
    private static readonly Dictionary<string, SiteFile> Site = SitePages.Render(Demo, new SiteOptions(new DateOnly(2026, 11, 25))).ToDictionary(f => f.Path, StringComparer.Ordinal);
    private static readonly IReadOnlyList<FitsAnswer> Answers = All(new Fits(Demo));

    // Worst first: the naive way to the best word is to let each better one overwrite it.
    private static readonly string[] Ladder =
        ["ruled out", "disputed", "lead", "told", "offered", "measured", "moulded", "seated", "ran", "proven", "documented"];

    [Fact]
    public void Every_cell_of_a_kind_is_the_best_word_of_the_part_in_the_family()
    {
        var cells = 0;
        foreach (var kind in PartKind.All.Where(k => Site.ContainsKey($"kinds/{k.Name}.html")))
        {
            var table = Parse($"kinds/{kind.Name}.html").QuerySelector("table")!;
            var columns = table.QuerySelectorAll("thead th").Select(h => h.TextContent).ToList();
            foreach (var row in table.QuerySelectorAll("tbody tr"))
            {
                var part = PartOf(row.QuerySelector("th a")!);
                for (var i = 2; i < columns.Count - 1; i++)
                {
                    var family = Demo.Families.Values.Single(f => f.Name == columns[i]);
                    var expected = BestWord(part, family.Id);
                    var cell = row.Children[i];
                    Assert.Equal(expected ?? "", cell.QuerySelector(".standing")?.TextContent ?? "");
                    if (expected is not null) cells++;
                }
            }
            Assert.Equal(Demo.Parts.Values.Count(p => p.Kind == kind && !p.Retired), table.QuerySelectorAll("tbody tr").Length);
        }
        Assert.True(cells > 100, $"only {cells} cells say anything");
    }

    [Fact]
    public void A_family_that_knows_a_part_is_never_left_out()
    {
        foreach (var answer in Answers)
        {
            foreach (var part in Named(answer).Select(n => n.Part).Distinct())
            {
                var page = Parse($"kinds/{Demo.Parts[part].Kind.Name}.html");
                Assert.Contains(Demo.Families[Demo.Positions[answer.Position].Family].Name, page.QuerySelectorAll("thead th").Select(h => h.TextContent));
            }
        }
    }

    [Fact]
    public void Every_job_names_the_best_accepted_part_of_each_family()
    {
        var table = Parse("roles.html").QuerySelector("table")!;
        var columns = table.QuerySelectorAll("thead th").Select(h => h.TextContent).ToList();
        var roles = Demo.Positions.Values.Select(p => p.Role).OfType<string>().Distinct().Order(StringComparer.Ordinal).ToList();
        var rows = table.QuerySelectorAll("tbody tr");
        Assert.Equal(roles.Count, rows.Length);
        for (var r = 0; r < roles.Count; r++)
        {
            for (var i = 1; i < columns.Count; i++)
            {
                var family = Demo.Families.Values.Single(f => f.Name == columns[i]).Id;
                var places = Demo.Positions.Values.Where(p => p.Role == roles[r] && p.Family == family).ToList();
                Assert.Equal(places.Count == 0, rows[r].Children[i].TextContent.Length == 0);
                foreach (var best in places.Select(p => Answers.Single(a => a.Position == p.Address).Candidates.FirstOrDefault(c => c.Accepted)).OfType<Candidate>().Where(c => c.Conditions.Count == 0))
                    Assert.Contains(Demo.Parts[best.Part].CurrentNumber, rows[r].Children[i].TextContent, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Every_path_of_several_steps_is_drawn_with_its_parts_and_words()
    {
        var figures = 0;
        foreach (var answer in Answers)
        {
            var position = Demo.Positions[answer.Position];
            var drawn = Parse(PageMap.Of(position)).QuerySelectorAll("figure.route svg").ToDictionary(f => f.GetAttribute("aria-label")!, StringComparer.Ordinal);
            foreach (var candidate in answer.Candidates.Where(c => c.Steps.Count > 1))
            {
                var figure = drawn[candidate.Reason];
                Assert.Equal(candidate.Steps.Count + 1, figure.QuerySelectorAll("path.outline").Length);
                Assert.Equal(candidate.Steps.Any(s => s.Kind is StepKind.SamePosition or StepKind.SameSize) ? 1 : 0, figure.QuerySelectorAll("path.dashed").Length);
                foreach (var step in candidate.Steps)
                {
                    Assert.Contains(Demo.Parts[step.To].CurrentNumber, figure.TextContent, StringComparison.Ordinal);
                    Assert.Contains(Words.Of(step.Standing), figure.TextContent, StringComparison.Ordinal);
                }
                figures++;
            }
        }
        Assert.True(figures > 20, $"only {figures} figures");
    }

    [Fact]
    public void A_lamp_for_other_mains_is_ruled_out_by_its_volts_in_words_and_in_the_table()
    {
        var page = Parse("positions/tarrock-t40/fixing--lamp-main.html");
        var refused = page.QuerySelectorAll(".refused").Single(r => r.TextContent.Contains("HL-362-900", StringComparison.Ordinal));
        Assert.Contains("voltage 100 V, where 230 V or 120 V belongs (TO4-1130.01, TO4-1135.01)", refused.TextContent, StringComparison.Ordinal);
        var row = page.QuerySelectorAll(".beside tbody tr").Single(r => r.QuerySelector("th")!.TextContent == "HL-362-900");
        Assert.Equal(["differs", "agrees", "agrees", "agrees", "agrees"], row.QuerySelectorAll("td .sub").Select(c => c.TextContent));
    }

    private static string? BestWord(string part, string family)
    {
        string? best = null;
        foreach (var word in Ladder)
            if (Answers.Where(a => Demo.Positions[a.Position].Family == family).SelectMany(Named).Any(n => n.Part == part && n.Word == word && IsBest(part, family, n))) best = word;
        return best;
    }

    // Words that are accepted somewhere in the family come before words that only stand.
    private static bool IsBest(string part, string family, (string Part, string Word, bool Accepted) named) =>
        named.Accepted || !Answers.Where(a => Demo.Positions[a.Position].Family == family).SelectMany(Named).Any(n => n.Part == part && n.Accepted);

    private static IEnumerable<(string Part, string Word, bool Accepted)> Named(FitsAnswer answer) =>
        answer.Candidates.Select(c => (c.Part, c.Standing, c.Accepted))
            .Concat(answer.Disputed.Select(d => (d.Part, "disputed", false)))
            .Concat(answer.RuledOut.Select(r => (r.Part, "ruled out", false)));

    private static List<FitsAnswer> All(Fits fits) => [.. Demo.Positions.Keys.Order(StringComparer.Ordinal).Select(p => fits.At(p))];

    private static string PartOf(IElement link) => Demo.Parts.Values.Single(p => link.GetAttribute("href") == $"../parts/{p.Id}.html").Id;

    private static IDocument Parse(string path) => new HtmlParser().ParseDocument(Site[path].AsText());
}
