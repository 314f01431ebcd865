using System.Text.Json.Nodes;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Pages;
using Crossref.Site.Pages.Calculation;

namespace Crossref.Site.Tests.Pages;

public sealed class PartsScriptTests
{
    private const string Assigns = "window.crossrefParts = ";

    private static readonly PartKind Bearing = PartKind.Find("bearing")!;

    private static readonly Place Nowhere = new("x.yaml", 1, 1);

    [Fact]
    public void It_lists_parts_of_the_kind_in_use_of_which_a_deciding_size_is_known()
    {
        var bore = new Dictionary<string, Size> { ["bore"] = new("12 +/- 0.02", new Quantity(12, 0.02m, Dimension.Length)), ["shields"] = new("zz", null) };
        var listed = Parts(
            Part("b-measured") with { Sizes = bore, Numbers = [new Ref("VB-1", Nowhere)], Safety = true },
            Part("a-designated") with { Standard = "6001-2RS" },
            Part("nothing-known"),
            Part("not-deciding") with { Sizes = new Dictionary<string, Size> { ["wire"] = new("1", new Quantity(1, 0, Dimension.Length)) } },
            Part("retired") with { Sizes = bore, Retired = true },
            Part("sleeve") with { Sizes = bore, Kind = PartKind.Find("sleeve")! });
        Assert.Equal(["a-designated", "b-measured"], listed.Select(p => (string)p!["id"]!));
        Assert.Equal("""{"bore":{"value":12,"uncertainty":0},"outside":{"value":28,"uncertainty":0},"width":{"value":8,"uncertainty":0},"flange":"NONE","shields":"2RS","clearance":"CN"}""", listed[0]!["sizes"]!.ToJsonString());
        Assert.Equal("""{"id":"b-measured","number":"VB-1","name":"Bearing","page":"parts/b-measured.html","safety":true,"house":"none","known":2,"sizes":{"bore":{"value":12,"uncertainty":0.02},"shields":"2Z"}}""", listed[1]!.ToJsonString());
    }

    [Theory]
    [InlineData("</script><script>globalThis.canary = 1</script>")]
    [InlineData("\"; globalThis.canary = 1; //")]
    [InlineData("line \u2028 paragraph \u2029 ü \\ ' ` ${1} \r\n")]
    [InlineData("__proto__")]
    public void What_people_write_of_a_part_is_handed_over_as_text(string text)
    {
        var part = Part("odd") with { Name = text, Numbers = [new Ref(text, Nowhere)], Sizes = new Dictionary<string, Size> { ["flange"] = new(text, null) } };
        var listed = Assert.Single(Parts(part))!;
        Assert.Equal((text, text), ((string?)listed["name"], (string?)listed["number"]));
        Assert.Equal(text.Trim().ToUpperInvariant(), (string?)listed["sizes"]!["flange"]);
    }

    private static Part Part(string id) => new() { Id = id, Place = Nowhere, Kind = Bearing, Name = "Bearing" };

    private static JsonArray Parts(params IReadOnlyList<Part> parts)
    {
        var library = new Library(new LibraryRecord { Id = "shop", Place = Nowhere, Title = "Shop" }, parts);
        var script = PartsScript.Of(new Desk(library, new SiteOptions(new DateOnly(2026, 11, 25)), new PageMap(library)), Bearing).AsText();
        Assert.StartsWith(Assigns, script, StringComparison.Ordinal);
        Assert.All(script[..^1], c => Assert.InRange(c, ' ', '~'));
        Assert.DoesNotContain("<", script, StringComparison.Ordinal);
        return JsonNode.Parse(script[Assigns.Length..].TrimEnd('\n', ';'))!.AsArray();
    }
}
