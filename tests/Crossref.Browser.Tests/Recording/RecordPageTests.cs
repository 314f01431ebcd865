using Crossref.Browser.Tests.Tabs;

namespace Crossref.Browser.Tests.Recording;

/// <summary>A finding from the bench to the page: filled in, saved, laid into the content folder, built, shown.</summary>
public abstract class RecordPageTests(IBrowser browser)
{
    private const string Position = "positions/ostrin-f2/fold-head--roller-2-bearing-rear.html";

    [Fact]
    public async Task A_finding_that_was_filled_in_saved_and_taken_in_stands_on_the_positions_page()
    {
        using var copy = new ContentCopy();
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(copy.Address(Position));
        await tab.ClickAsync(".record-link a");
        await tab.SaysAsync("h1", "Record a finding");
        await tab.UntilAsync("document.querySelector('#field-at').value === 'Second fold roller bearing, rear side'");
        await tab.ClickAsync("#field-part");
        await tab.TypeAsync("os 1103");
        await tab.PressAsync("Enter");
        await tab.SaysAsync("#field-part-chosen", "brg-os-1103");
        await ChooseAsync(tab, "verdict", "fits-with-change");
        await FillAsync(tab, "change", "collar: turned down \"0.3\" mm");
        await ChooseAsync(tab, "basis", "ran");
        await FillAsync(tab, "count", "18000");
        await FillAsync(tab, "source", "red book");
        await tab.PressAsync("Enter");
        await tab.SaysAsync("#field-source-chosen", "workshop-log");
        await FillAsync(tab, "by", "orr");
        await tab.PressAsync("ArrowDown");
        await tab.PressAsync("Enter");
        await tab.ClickAsync(".recording button[type=submit]");
        await tab.SaysAsync("#saved", "Saved as a file");
        var text = await tab.AskAsync<string>("document.querySelector('.saved-text').textContent");
        var name = await tab.AskAsync<string>("document.querySelector('.saved-name').textContent");
        Assert.Equal(
            $$"""
            claim: {{Path.GetFileNameWithoutExtension(name)}}
            part: brg-os-1103
            at: ostrin-f2/fold-head/roller-2-bearing-rear
            verdict: fits-with-change
            basis: ran
            sheets: 18000
            change: "collar: turned down \"0.3\" mm"
            source: workshop-log
            by: M. Orr
            date: {{await tab.AskAsync<string>("document.querySelector('#field-date').value")}}

            """,
            text);

        // Until the library has it, it is in the list, also after the page was left.
        await tab.OpenAsync("about:blank");
        await tab.OpenAsync(copy.Address("record.html"));
        await tab.SaysAsync(".kept-list", "OS-1103-01 fits with a change at Second fold roller bearing, rear side");
        await tab.SaysAsync(".kept-list", "Not yet in the library");

        copy.Add("inbox/" + name, text);
        Assert.Contains(Path.GetFileNameWithoutExtension(name), copy.Build(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(copy.Content, "inbox", name)));
        await tab.OpenAsync("about:blank");
        await tab.OpenAsync(copy.Address("record.html"));
        await tab.SaysAsync(".storage-says", "in the library now");
        await tab.UntilAsync("document.querySelector('.kept').hidden");
        await tab.OpenAsync(copy.Address(Position));
        await tab.SaysAsync(".evidence", Path.GetFileNameWithoutExtension(name));
        await tab.UntilAsync("document.querySelector('.recorded-here').hidden");
        Assert.Contains("turned down", await tab.AskAsync<string>("document.querySelector('main').textContent"), StringComparison.Ordinal);
        tab.WasQuiet();
    }

    [Fact]
    public async Task A_question_is_saved_as_well()
    {
        using var copy = new ContentCopy();
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(copy.Address("record.html"));
        await ChooseAsync(tab, "kind", "question");
        await FillAsync(tab, "asks", "Does it need [the] longer pin?");
        await FillAsync(tab, "about", "roller 2 gear");
        await tab.SaysAsync("#field-about-list", "gear");
        await tab.PressAsync("Enter");
        await tab.ClickAsync(".recording button[type=submit]");
        await tab.SaysAsync("#saved", "Saved as a file");
        var text = await tab.AskAsync<string>("document.querySelector('.saved-text').textContent");
        Assert.Contains("\nasks: \"Does it need [the] longer pin?\"\nabout: [ostrin-f2/fold-head/roller-2-gear]\ndate: ", text, StringComparison.Ordinal);
        copy.Add("inbox/question.yaml", text);
        copy.Build();
        await tab.OpenAsync(copy.Address("questions.html"));
        await tab.SaysAsync("main", "Does it need [the] longer pin?");
        tab.WasQuiet();
    }

    [Fact]
    public async Task Work_that_was_begun_comes_back_and_what_will_not_do_is_said_at_its_field()
    {
        using var copy = new ContentCopy();
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(copy.Address("record.html") + "#at=ostrin-f2/fold-head/roller-2-bearing-rear&machine=press-1");
        await FillAsync(tab, "part", "OS-1293-02");
        await tab.PressAsync("Escape");
        await ChooseAsync(tab, "basis", "ran");
        await FillAsync(tab, "count", "18,000");
        await tab.ClickAsync(".recording button[type=submit]");
        await tab.SaysAsync("#field-at-problem", "has no such place");
        await tab.SaysAsync("#field-part-problem", "No part here has the number \"OS-1293-02\"");
        await tab.SaysAsync("[data-field=part] .offer", "OS-1203-02");
        await tab.SaysAsync("[data-field=verdict] .problem", "whether it fits");
        await tab.SaysAsync("#field-count-problem", "Write digits only: 18000.");
        await tab.SaysAsync("#field-source-mind", "counts as told");
        await tab.SaysAsync(".form-says", "4 things will not do");
        await tab.UntilAsync("document.activeElement.id === 'field-at'");
        Assert.True(await tab.AskAsync<bool>("document.querySelector('.saved').hidden"));

        var address = await tab.AskAsync<string>("location.href");
        await tab.OpenAsync("about:blank");
        await tab.OpenAsync(address);
        await tab.UntilAsync("document.querySelector('#field-count').value === '18,000' && document.querySelector('#field-part').value === 'OS-1293-02'");
        await tab.SaysAsync(".kept-list", "Begun, not saved");
        await tab.ClickAsync("[data-field=part] .offer");
        await tab.SaysAsync("#field-part-chosen", "brg-os-1203");
        await tab.ClickAsync(".kept-list .clear");
        await tab.SaysAsync(".kept-list .clear", "for good?");
        await tab.ClickAsync(".kept-list .clear");
        await tab.UntilAsync("document.querySelector('.kept').hidden && document.querySelector('#field-count').value === ''");
        tab.WasQuiet();
    }

    private static Task ChooseAsync(ITab tab, string field, string word) => tab.ClickAsync($"input[name={field}][value={word}]");

    private static async Task FillAsync(ITab tab, string field, string text)
    {
        await tab.ClickAsync("#field-" + field);
        await tab.TypeAsync(text);
    }
}
