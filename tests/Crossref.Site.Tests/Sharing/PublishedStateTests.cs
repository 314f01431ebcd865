using System.Text;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Publishing;

namespace Crossref.Site.Tests.Sharing;

public sealed class PublishedStateTests
{
    private static readonly DateOnly Then = new(2026, 3, 1);
    private const string Claims = "claims/ours.yaml";

    [Fact]
    public void What_was_kept_reads_back_and_nothing_has_changed()
    {
        using var folder = Shop();
        var state = Keep(folder);
        var read = Publications.Read(folder.Path, new Disk())!.Last;
        Assert.Equal(state.Date, read.Date);
        Assert.Equal(state.Standings.OrderBy(s => s.Key), read.Standings.OrderBy(s => s.Key));
        Assert.True(state.Recorded.SetEquals(read.Recorded));
        Assert.True(ChangesSince.Between(state, read).IsEmpty);
        Assert.NotEmpty(state.Standings);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("{\"format\": \"another\"}")]
    [InlineData("{\"format\": \"crossref-published-1\", \"last\": {\"date\": \"2026-13-01\", \"standings\": [], \"recorded\": []}}")]
    [InlineData("{\"format\": \"crossref-published-1\", \"last\": {\"date\": \"2026-03-01\", \"standings\": [[\"a\"]], \"recorded\": []}}")]
    [InlineData("[1]")]
    public void A_damaged_one_is_the_same_as_none(string text)
    {
        using var folder = Shop();
        folder.Write(Publications.FileName, text);
        Assert.Null(Publications.Read(folder.Path, new Disk()));
    }

    [Fact]
    public void A_stick_that_is_packed_again_on_the_same_day_is_compared_with_the_one_before()
    {
        using var folder = Shop();
        var (first, second) = (PublishedState.Of(Library(folder), Then), PublishedState.Of(Library(folder), Then.AddDays(1)));
        var once = Publications.After(Publications.After(null, first), second);
        Assert.Equal((second, first), (once.Last, once.Before));
        Assert.Equal(first, once.ComparedOn(Then.AddDays(1)));
        Assert.Equal(second, once.ComparedOn(Then.AddDays(2)));
        Assert.Equal(once, Publications.After(once, second));
    }

    [Fact]
    public void New_confirmed_contradicted_and_withdrawn_are_told_apart()
    {
        using var folder = Shop("""
            {claim: risen, part: b, at: f1/head/one, verdict: fits, basis: told, source: log}
            ---
            {claim: fallen, part: b, at: f1/head/two, verdict: fits, basis: seated, source: log}
            ---
            {claim: gone, part: c, at: f1/head/two, verdict: fits, basis: seated, source: log}
            """);
        Keep(folder);
        folder.Write("claims/later.yaml", """
            {claim: more, part: b, at: f1/head/one, verdict: fits, basis: seated, source: log}
            ---
            {claim: less, part: b, at: f1/head/two, verdict: does-not-fit, basis: ran, sheets: 500, source: log}
            ---
            {claim: back, part: c, at: f1/head/two, withdraws: gone}
            ---
            {claim: tried, part: c, at: f1/head/one, verdict: fits, basis: seated, source: log}
            ---
            {part: d, kind: bearing, name: Bearing D, maker: Velm, numbers: [VM-D]}
            ---
            {claim: fresh, part: d, at: f1/head/one, verdict: fits, basis: seated, source: log}
            """);
        var changes = ChangesSince.Between(Publications.Read(folder.Path, new Disk())!.Last, PublishedState.Of(Library(folder), Then.AddDays(9)));
        Assert.Equal(Then, changes.Since);
        Assert.Equal(["back", "fresh", "less", "more", "tried"], changes.Recorded);
        Assert.Equal([new StandingChange("f1/head/one", "d", "nothing", "seated")], changes.New);
        Assert.Equal([new StandingChange("f1/head/one", "b", "told", "seated"), new StandingChange("f1/head/one", "c", "lead", "seated")], changes.Confirmed);
        Assert.Equal([new StandingChange("f1/head/two", "b", "seated", "ruled out"), new StandingChange("f1/head/two", "c", "seated", "lead")], changes.Contradicted);
        Assert.Equal(["gone"], changes.Withdrawn);
    }

    [Fact]
    public void The_page_says_so_and_without_a_stick_says_that_there_was_none()
    {
        using var folder = Shop();
        Assert.Contains("No stick has been packed", Page(folder), StringComparison.Ordinal);
        Keep(folder);
        Assert.Contains("Nothing was taken back.", Page(folder), StringComparison.Ordinal);
        folder.Write("claims/later.yaml", "{claim: fresh, part: c, at: f1/head/one, verdict: fits, basis: seated, source: log}\n");
        var page = Page(folder);
        Assert.Contains("Since 2026-03-01", page, StringComparison.Ordinal);
        Assert.Contains("VM-C", page, StringComparison.Ordinal);
    }

    private static string Page(TemporaryFolder folder)
    {
        var options = new SiteOptions(Then.AddDays(9)) { Published = Publications.Read(folder.Path, new Disk())?.Last };
        return SitePages.Render(Library(folder), options).Single(f => f.Path == "changes.html").AsText();
    }

    private static PublishedState Keep(TemporaryFolder folder)
    {
        var state = PublishedState.Of(Library(folder), Then);
        var file = Publications.After(null, state).ToFile();
        folder.Write(file.Path, Encoding.UTF8.GetString(file.Content!));
        return state;
    }

    private static Core.Records.Library Library(TemporaryFolder folder)
    {
        var read = ContentReader.Read(folder.Path);
        Assert.DoesNotContain(read.Check(Then.AddDays(9)), d => d.Severity == Core.Checking.Severity.Error);
        return read.Library!;
    }

    private static TemporaryFolder Shop(string claims = "{claim: risen, part: b, at: f1/head/one, verdict: fits, basis: told, source: log}")
    {
        var folder = new TemporaryFolder();
        folder.Write("shop.yaml", """
            library: shop
            title: A shop
            ---
            {source: list, type: parts-list, title: Parts list of the F1}
            ---
            {source: log, type: measurement, title: Workshop log}
            ---
            family: f1
            name: F1 folders
            maker: Ostrin
            models: [{model: F1, mains: 230}]
            assemblies:
              - assembly: head
                name: Fold head
                positions:
                  - {position: one, name: First bearing, kind: bearing, listed: [a], source: list}
                  - {position: two, name: Second bearing, kind: bearing, listed: [a], source: list}
            ---
            {part: a, kind: bearing, name: Bearing A, maker: Ostrin, numbers: [OS-A]}
            ---
            {part: b, kind: bearing, name: Bearing B, maker: Velm, numbers: [VM-B]}
            ---
            {part: c, kind: bearing, name: Bearing C, maker: Velm, numbers: [VM-C]}
            """);
        folder.Write(Claims, claims);
        return folder;
    }
}
