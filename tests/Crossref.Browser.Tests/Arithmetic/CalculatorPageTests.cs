using Crossref.Browser.Tests.Demo;
using Crossref.Browser.Tests.Tabs;
using Crossref.Calculations;
using Crossref.Core.Arithmetic;
using Crossref.Core.Records;
using Crossref.Site.Reading;

namespace Crossref.Browser.Tests.Arithmetic;

/// <summary>The calculators of the site against the same calculators in this process, character by character.</summary>
public abstract class CalculatorPageTests(IBrowser browser, DemoSite site) : IClassFixture<DemoSite>
{
    private const int RandomRuns = 400;

    private const string Choose =
        """
        void ((list) => {
          list.value = it[1];
          list.dispatchEvent(new Event("input", { bubbles: true }));
        })(document.getElementById(it[0]))
        """;

    public static TheoryData<string> Names => [.. Calculators.All.Select(c => c.Name)];

    public static TheoryData<string> Seeking => [.. Calculators.All.Where(c => c.Seeks is not null).Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Every_case_is_shown_as_it_comes_out_here(string name)
    {
        var calculator = Named(name);
        var tab = await OpenAsync(name);
        var cases = Cases(calculator);
        Assert.Equal("", Differences(calculator, cases, await Outcomes.ShownAsync(tab, cases)));
        tab.WasQuiet();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Whatever_is_written_comes_to_the_same(string name)
    {
        var calculator = Named(name);
        var tab = await OpenAsync(name);
        var texts = new RandomInputs(calculator, Cases(calculator), 20261125).Take(RandomRuns).ToList();
        Assert.Equal("", Differences(calculator, texts, await Outcomes.ScriptedAsync(tab, name, texts)));
        var worked = texts.Count(t => calculator.Run(t, Record).Working is not null);
        Assert.InRange(worked, RandomRuns / 10, RandomRuns * 9 / 10);
    }

    [Fact]
    public async Task A_figure_that_comes_out_otherwise_is_noticed()
    {
        var calculator = Calculators.All[0];
        var tab = await OpenAsync(calculator.Name);
        var cases = Cases(calculator);
        await tab.AskAsync<object>(
            """
            void ((all) => {
              const right = all[it];
              all[it] = (...given) => {
                const working = right(...given);
                if (working) working.lines.at(-1).figure += ".";
                return working;
              };
            })(crossrefCalculators.all)
            """,
            calculator.Name);
        Assert.NotEqual("", Differences(calculator, cases, await Outcomes.ShownAsync(tab, cases)));
        Assert.NotEqual("", Differences(calculator, cases, await Outcomes.ScriptedAsync(tab, calculator.Name, cases)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task It_is_worked_out_while_somebody_types_and_the_address_brings_it_again(string name)
    {
        var calculator = Named(name);
        var texts = Cases(calculator).First(c => calculator.Run(c, Record).Working is not null);
        var tab = await OpenAsync(name);
        foreach (var (input, text) in texts)
        {
            if (await tab.AskAsync<bool>("!document.getElementById(it).checkVisibility()", "field-" + input)) await tab.ClickAsync($"details:has(#field-{input}) > summary");
            if (calculator.Inputs.Single(i => i.Name == input).Choices.Count > 0)
            {
                await tab.AskAsync<object>(Choose, (string[])["field-" + input, text]);
                continue;
            }
            await tab.ClickAsync("#field-" + input);
            await tab.TypeAsync(text);
        }
        var answer = calculator.Run(texts, Record).Working!.Answer;
        await tab.UntilAsync("document.querySelector('.says').textContent === it", answer);
        var address = await tab.AskAsync<string>("location.href");
        await tab.OpenAsync("about:blank");
        await tab.OpenAsync(address);
        await tab.UntilAsync("document.querySelector('.says').textContent === it", answer);
        Assert.True(await tab.AskAsync<bool>("it.every((id) => document.getElementById(id).checkVisibility())", texts.Keys.Select(i => "field-" + i)), "what is written is hidden");
        tab.WasQuiet();
    }

    [Theory]
    [MemberData(nameof(Seeking))]
    public async Task The_same_sizes_are_looked_for_and_the_same_parts_found(string name)
    {
        var calculator = Named(name);
        var tab = await OpenAsync(name);
        var cases = Cases(calculator);
        List<IReadOnlyDictionary<string, string>> texts = [.. cases, .. new RandomInputs(calculator, cases, 4711).Take(RandomRuns)];
        Assert.Equal("", Differences(calculator, texts, t => Outcomes.Sought(calculator, t, Record, Library), await Outcomes.SoughtAsync(tab, name, texts)));
        Assert.All(texts.Select(t => calculator.Run(t, Record).Working?.Sought).OfType<Sought>(), s => Assert.Same(calculator.Seeks, s.Kind));

        var near = NearParts.Library(texts.Select(t => calculator.Run(t, Record).Working?.Sought).OfType<Sought>(), 4711);
        var here = texts.Select(t => Outcomes.Sought(calculator, t, Record, near)).ToList();
        Assert.Equal("", Differences(calculator, texts, t => Outcomes.Sought(calculator, t, Record, near), await Outcomes.SoughtAsync(tab, name, texts, NearParts.Listed(near, calculator.Seeks!))));
        Assert.InRange(here.Count(h => h.Contains("agrees", StringComparison.Ordinal)), texts.Count / 20, texts.Count);
    }

    private static Library Library { get; } = ContentReader.Read(Path.Combine(RepositoryFiles.Root, "content")).Library!;

    private static OnRecord Record { get; } = OnRecord.Of(Library);

    private static Calculator Named(string name) => Calculators.All.Single(c => c.Name == name);

    private static List<IReadOnlyDictionary<string, string>> Cases(Calculator calculator) =>
        [.. CalculationCase.All(RepositoryFiles.Root).Where(c => c.Calculator == calculator.Name)
            .Select(c => c.Inputs.ToDictionary(i => i.Key.Length > 0 ? i.Key : calculator.Inputs.Single(x => x.Argument).Name, i => i.Value))];

    private static string Differences(Calculator calculator, List<IReadOnlyDictionary<string, string>> texts, string[] there) =>
        Differences(calculator, texts, t => Outcomes.Of(calculator, t, Record, Library), there);

    private static string Differences(Calculator calculator, List<IReadOnlyDictionary<string, string>> texts, Func<IReadOnlyDictionary<string, string>, string> here, string[] there)
    {
        Assert.NotEmpty(texts);
        Assert.Equal(texts.Count, there.Length);
        var different = texts.Zip(there, (t, shown) => (Texts: t, Here: here(t), There: shown)).Where(x => x.Here != x.There).ToList();
        return different.Count == 0 ? "" : $"{different.Count} of {texts.Count} differ\n" + string.Join("\n\n", different.Take(5).Select(x =>
            $"{calculator.Name} {string.Join(' ', x.Texts.Select(t => $"{t.Key}='{t.Value}'"))}\n--- here\n{x.Here}\n--- there\n{x.There}"));
    }

    private async Task<ITab> OpenAsync(string name)
    {
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(site.Address($"calculators/{name}.html"));
        return tab;
    }
}
