using System.Text.Json.Nodes;
using AngleSharp.Html.Parser;
using Crossref.Core.Arithmetic;
using Crossref.Site.Pages;
using Crossref.Site.Pages.Calculation;

namespace Crossref.Site.Tests.Pages;

public sealed class CalculatorPagesTests
{
    private const string Assigns = "window.crossrefCalculatorTables = ";

    private static readonly IReadOnlyDictionary<string, SiteFile> Site = SmallLibrary.Render(SmallLibrary.Read());

    public static TheoryData<string> Names => [.. Calculators.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_asks_for_what_its_calculator_declares(string name)
    {
        var calculator = Calculators.All.Single(c => c.Name == name);
        var page = new HtmlParser().ParseDocument(Site[$"calculators/{name}.html"].AsText());
        Assert.Equal(calculator.Inputs.Select(i => i.Name), page.QuerySelectorAll(".field").Select(f => f.GetAttribute("data-name")));
        foreach (var input in calculator.Inputs)
        {
            var control = page.GetElementById("field-" + input.Name)!;
            Assert.StartsWith(input.Label, page.QuerySelector($"label[for={control.Id}]")!.TextContent, StringComparison.Ordinal);
            var options = control.QuerySelectorAll("option").Select(o => o.TextContent).ToList();
            Assert.Equal(input.Choices.Count == 0 ? [] : input.Default.Length > 0 ? input.Choices : ["not known", .. input.Choices], options);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_without_scripts_names_the_command_and_shows_no_form(string name)
    {
        var page = new HtmlParser().ParseDocument(Site[$"calculators/{name}.html"].AsText());
        Assert.True(page.QuerySelector(".worksheet")!.HasAttribute("hidden"));
        Assert.Contains($"crossref {name}", page.QuerySelector("main .no-script")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_loads_the_script_that_works_it_out_and_others_do_not(string name)
    {
        var script = $"calculator-{name}.js";
        Assert.Contains("window.crossrefCalculators.all", Site[script].AsText(), StringComparison.Ordinal);
        Assert.Equal([$"calculators/{name}.html"], SmallLibrary.Html(Site).Where(f => f.AsText().Contains(script, StringComparison.Ordinal)).Select(f => f.Path));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Only_a_calculator_for_a_kind_of_part_lists_parts_and_only_its_page_loads_them(string name)
    {
        var seeks = Calculators.All.Single(c => c.Name == name).Seeks is not null;
        string[] expected = seeks ? [$"calculators/{name}.html"] : [];
        Assert.Equal(expected, SmallLibrary.Html(Site).Where(f => f.AsText().Contains($"calculator-parts-{name}.js", StringComparison.Ordinal)).Select(f => f.Path));
        Assert.Equal(seeks, Site.ContainsKey($"calculator-parts-{name}.js"));
        Assert.Equal(seeks, Site[$"calculators/{name}.html"].AsText().Contains("class=\"on-record\"", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Questions_of_the_bench_are_answered(string name)
    {
        var calculator = Calculators.All.Single(c => c.Name == name);
        var questions = BenchQuestions.Of(name);
        Assert.NotEmpty(questions);
        Assert.All(questions, q =>
        {
            Assert.All(q.Inputs, i => Assert.Contains(i.Name, calculator.Inputs.Select(x => x.Name)));
            var result = calculator.Run(q.Inputs.ToDictionary(i => i.Name, i => i.Text), OnRecord.Nothing);
            Assert.True(result.Working is not null, $"{q.Question} {string.Join(' ', result.Problems)}");
        });
    }

    [Fact]
    public void Names_of_inputs_suit_an_address_in_which_looking_up_has_its_own() =>
        Assert.All(Calculators.All.SelectMany(c => c.Inputs), i => Assert.Matches("^(?!q$)[a-z0-9]+(-[a-z0-9]+)*$", i.Name));

    [Fact]
    public void Calculators_can_be_looked_up()
    {
        var library = SmallLibrary.Read();
        var entries = LookupEntries.Of(library, new PageMap(library)).Where(e => e.Type == "calculator").ToList();
        Assert.Equal(Calculators.All.Select(c => c.Name), entries.Select(e => e.Id));
        Assert.All(entries, e => Assert.Contains(e.Page, Site.Keys));
    }

    [Theory]
    [InlineData("</script><script>globalThis.canary = 1</script>")]
    [InlineData("\"; globalThis.canary = 1; //")]
    [InlineData("line \u2028 paragraph \u2029 ü \\ ' ` ${1} \r\n")]
    [InlineData("__proto__")]
    public void What_the_library_calls_a_place_is_handed_over_as_text(string name)
    {
        var script = CalculatorScript.Of(new OnRecord([new TurningPlace("f/a/p", name, "f", new Interval(94, 95), "because")]), position => position + ".html").AsText();
        Assert.StartsWith(Assigns, script, StringComparison.Ordinal);
        Assert.All(script[..^1], c => Assert.InRange(c, ' ', '~'));
        Assert.DoesNotContain("<", script, StringComparison.Ordinal);
        var data = JsonNode.Parse(script[Assigns.Length..].TrimEnd('\n', ';'))!;
        Assert.Equal(name, (string?)data["record"]!["turning"]![0]!["name"]);
    }
}
