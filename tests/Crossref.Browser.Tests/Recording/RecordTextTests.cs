using System.Text.Json;
using Crossref.Browser.Tests.Demo;
using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Recording;
using Crossref.Site.Tests;
using Crossref.Site.Tests.Hostile;

namespace Crossref.Browser.Tests.Recording;

/// <summary>What the page writes is what the build reads, and what the page says of it is what the build says.</summary>
public abstract class RecordTextTests(IBrowser browser, DemoSite site) : IClassFixture<DemoSite>
{
    private const int Forms = 600;
    private const string Today = "2026-11-25";

    private static readonly DateOnly Date = new(2026, 11, 25);

    private const string Written =
        """
        (() => {
          const { Book, check, body, mint, whole } = crossrefRecord;
          const book = new Book(crossrefRecordData);
          return it.forms.map((fields) => {
            const { problems, minds, record } = check(fields, book, it.today);
            const id = mint(it.today, "ferry-lane", body(record));
            return { problems: Object.keys(problems), minds: Object.keys(minds), id, text: whole(record, id) };
          });
        })()
        """;

    // Which field speaks of what the build warns of.
    private static readonly Dictionary<string, string> Warnings = new()
    {
        ["CR0603"] = "source", ["CR0604"] = "source", ["CR0605"] = "count", ["CR0801"] = "date",
    };

    private sealed record Answer(string[] Problems, string[] Minds, string Id, string Text);

    [Fact]
    public async Task Whatever_is_filled_in_is_written_so_that_it_reads_back_and_is_judged_as_the_build_judges_it()
    {
        var demo = ContentReader.Read(Path.Combine(RepositoryFiles.Root, "content")).Library!;
        var random = new RandomForms(demo, 20261125);
        var forms = Enumerable.Range(0, Forms).Select(_ => random.Next()).ToList();
        var answers = await AnswersAsync(forms);
        var cases = forms.Zip(answers).DistinctBy(c => c.Second.Id).ToList();

        using var content = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "content"), "*", SearchOption.AllDirectories))
            content.Write(Path.GetRelativePath(Path.Combine(RepositoryFiles.Root, "content"), file), File.ReadAllBytes(file));
        foreach (var (_, answer) in cases) content.Write(FileOf(answer), answer.Text);
        var read = ContentReader.Read(content.Path);
        var found = read.Check(Date).ToLookup(d => d.Place.File);

        var desk = new RecordingDesk(content.Path, ContentReader.Read(Path.Combine(RepositoryFiles.Root, "content")), Date);
        var wrong = new List<string>();
        var compared = 0;
        foreach (var (form, answer) in cases)
        {
            var diagnostics = found[FileOf(answer)].ToList();
            var isRefused = diagnostics.Any(d => d.Severity == Severity.Error);
            if (isRefused != answer.Problems.Length > 0) Tell("refused here or there alone", diagnostics);
            else if (!isRefused)
            {
                var warned = diagnostics.Select(d => Warnings.GetValueOrDefault(d.Code.ToString())).OfType<string>().Distinct().Order(StringComparer.Ordinal);
                var minded = answer.Minds.Where(m => Warnings.ContainsValue(m) && (m != "date" || form["date"].Length > 0)).Order(StringComparer.Ordinal);
                if (!warned.SequenceEqual(minded)) Tell("minded otherwise", diagnostics);
                if (form["date"] == Today && ++compared > 0 && desk.Claim(Typed(form, read.Library!.Claims[answer.Id])).Text is var typed && typed != answer.Text)
                    Tell($"the command writes\n{typed}", diagnostics);
                if (Different(form, read.Library!.Claims[answer.Id]) is { } field) Tell($"{field} reads back otherwise", diagnostics);
            }

            void Tell(string what, List<Diagnostic> says) => wrong.Add(
                $"{what}: problems {string.Join(' ', answer.Problems)}; minds {string.Join(' ', answer.Minds)}\n{answer.Text}{string.Join('\n', says)}\n{JsonSerializer.Serialize(form)}");
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {cases.Count}\n{string.Join("\n\n", wrong.Take(6))}");
        Assert.InRange(compared, 10, cases.Count);
        Assert.InRange(cases.Count(c => c.Second.Problems.Length == 0), cases.Count / 10, cases.Count * 9 / 10);
    }

    [Fact]
    public async Task Hidden_characters_are_the_same_here_and_there()
    {
        var tab = await OpenAsync();
        var random = new Random(20261125);
        string[] some = [.. HostileText.Hidden, .. HostileText.Broken, .. HostileText.Joiners, "\uFE0F", "a", "\u0915", "\u094D", "\U0001F527", "\u00e9", " ", "\n", "\r", "\uFFFE", "\U000F0000"];
        var texts = Enumerable.Range(0, 2000).Select(_ => string.Concat(Enumerable.Range(0, random.Next(1, 5)).Select(_ => some[random.Next(some.Length)]))).ToList();
        var there = await tab.AskAsync<bool[]>("it.map((text) => crossrefRecord.hidden(text) !== '')", texts);
        Assert.Equal(texts.Where(t => HiddenCharacters.IndexIn(t) >= 0), texts.Where((_, i) => there[i]));
        Assert.InRange(there.Count(t => t), 100, 1900);
        Assert.Equal("[true,true,false]", await tab.AskAsync<string>("JSON.stringify(['\\ud800', 'x\\udc00', '\\ud83d\\udd27'].map((text) => crossrefRecord.hidden(text) !== ''))"));
    }

    [Fact]
    public async Task Keys_stand_in_the_order_of_the_format()
    {
        var tab = await OpenAsync();
        var order = await tab.AskAsync<Dictionary<string, string[]>>("crossrefRecord.ORDER");
        Assert.Equal(ShopShapes.Claim.Keys.Select(k => k.Name).Where(order["claim"].Contains), order["claim"]);
        Assert.Equal(ShopShapes.Question.Keys.Select(k => k.Name).Where(order["question"].Contains), order["question"]);
        // What the form does not ask.
        Assert.Equal(
            ["claim", "replaces", "where", "both-ways", "only-if", "withdraws", "pictures", "retired"],
            ShopShapes.Claim.Keys.Select(k => k.Name).Except(order["claim"]));
    }

    [Fact]
    public async Task The_form_offers_every_word_that_may_be_written()
    {
        var tab = await OpenAsync();
        foreach (var (field, words) in new[] { ("verdict", Words.All<Verdict>()), ("basis", [.. Words.All<Basis>().Where(w => w != "proven")]) })
        {
            var offered = await tab.AskAsync<string[]>("[...document.querySelectorAll(`input[name=${it}]`)].map((radio) => radio.value)", field);
            Assert.Equal(words.Order(StringComparer.Ordinal), offered.Order(StringComparer.Ordinal));
        }

        Assert.Equal(Words.All<CountUnit>(), await tab.AskAsync<string[]>("[...document.querySelector('#field-unit').options].map((option) => option.value)"));
    }

    // What the command is told; it knows parts by their ids alone.
    private static Dictionary<string, string> Typed(Dictionary<string, string> form, Claim claim)
    {
        var typed = new Dictionary<string, string>(form) { ["part"] = claim.Part.Id };
        if (form["basis"] == "ran") typed[form["unit"]] = form["count"];
        if (form["verdict"] != "fits-with-change") typed.Remove("change");
        return typed;
    }

    private static string FileOf(Answer answer) => $"claims/{answer.Id}.yaml";

    private static string? Different(Dictionary<string, string> form, Claim claim)
    {
        string? Line(string? text) => text is null || string.IsNullOrWhiteSpace(text) ? null
            : (text.AsSpan().ContainsAny('\n', '\t') ? string.Join(' ', text.Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries)) : text).Trim() is { Length: > 0 } line ? line : null;
        (string, string?, string?)[] pairs =
        [
            ("at", form["at"], claim.At?.Id), ("machine", Line(form["machine"]), claim.Machine?.Id), ("source", Line(form["source"]), claim.Source?.Id),
            ("verdict", form["verdict"], Words.Of(claim.Verdict!.Value)), ("basis", form["basis"], Words.Of(claim.Basis!.Value)),
            ("change", form["verdict"] == "fits-with-change" ? Line(form["change"]) : null, claim.Change),
            ("locator", Line(form["locator"]), claim.Locator), ("by", Line(form["by"]), claim.By), ("note", Line(form["note"]), claim.Note),
            ("date", form["date"].Length > 0 ? form["date"] : "unknown", claim.Date.ToString()),
            ("count", form["basis"] == "ran" ? $"{decimal.Parse(form["count"], System.Globalization.CultureInfo.InvariantCulture):0} {form["unit"]}" : null, claim.Run is { } run ? $"{run.Value:0} {Words.Of(run.Unit)}" : null),
            ("neighbours", form["neighbours"], claim.NeighboursDamaged switch { true => "damaged", false => "undamaged", null => "" }),
            ("orientation", form["orientation"], string.Join(", ", claim.Orientation.Select(o => $"{o.Key}: {o.Value}"))),
        ];
        return pairs.FirstOrDefault(p => p.Item2 != p.Item3) is { Item1: { } field } different ? $"{field} '{different.Item2}' against '{different.Item3}'" : null;
    }

    private async Task<Answer[]> AnswersAsync(List<Dictionary<string, string>> forms)
    {
        var tab = await OpenAsync();
        var text = await tab.AskAsync<JsonElement>(Written, new { forms, today = Today });
        return text.Deserialize<Answer[]>(JsonSerializerOptions.Web)!;
    }

    private async Task<ITab> OpenAsync()
    {
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(site.Address("record.html"));
        return tab;
    }
}
