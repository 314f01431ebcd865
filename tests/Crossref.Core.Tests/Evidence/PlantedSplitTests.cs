using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using static Crossref.Core.Tests.Evidence.SplitShop;

namespace Crossref.Core.Tests.Evidence;

/// <summary>A difference that is put on record is named in the sentence that says why; without it nothing is.</summary>
public class PlantedSplitTests
{
    private static readonly PartialDate Day = new(2026, 2, 11);

    /// <summary>What the four claims' machines or days differ in, and the words for it. Family can split comparisons of parts only.</summary>
    public static TheoryData<string, bool, string> Plants { get; } = new()
    {
        { "model", true, "model (yes: F; no: G)" },
        { "model", false, "model (yes: F; no: G)" },
        { "serial", true, "serial (yes up to 2199, no from 2200)" },
        { "serial", false, "serial (yes up to 2199, no from 2200)" },
        { "serial, later yes", true, "serial (no up to 2199, yes from 2200)" },
        { "mains", true, "mains (yes: 230 V; no: 120 V)" },
        { "mains", false, "mains (yes: 230 V; no: 120 V)" },
        { "family", false, "family (yes: The first family; no: The second family)" },
        { "machine", true, "machine (yes: one; no: other)" },
        { "machine", false, "machine (yes: one; no: other)" },
        { "date", true, "date (yes until 2026-02-11, no since 2026-03)" },
        { "date", false, "date (yes until 2026-02-11, no since 2026-03)" },
        { "date, later yes", true, "date (no until 2026-02-11, yes since 2026-03)" },
    };

    [Theory]
    [MemberData(nameof(Plants))]
    public void A_planted_split_is_said_and_nothing_else(string plant, bool atPosition, string said) =>
        Assert.EndsWith($"; what tells them apart: {said}.", Sentence(plant, atPosition), StringComparison.Ordinal);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Without_a_plant_the_same_claims_are_not_told_apart(bool atPosition) =>
        Assert.EndsWith("; nothing on record tells the two apart.", Sentence("none", atPosition), StringComparison.Ordinal);

    [Fact]
    public void The_machine_and_the_day_are_left_out_where_the_build_splits()
    {
        Machine[] machines = [Machine("one", model: "F", mains: 230), Machine("other", model: "G", mains: 120)];
        Claim[] claims = [Claim("c1", true, true, "one", Day), Claim("c2", false, true, "other", new PartialDate(2026, 3, 1))];
        Assert.Equal(["model (yes: F; no: G)", "mains (yes: 230 V; no: 120 V)"], Found([.. machines, .. claims]));
    }

    [Fact]
    public void What_a_claim_is_limited_to_counts_before_its_machine()
    {
        var machine = Machine("one", model: "F", serial: "2300", mains: 230);
        var limited = Said(true) with { Machine = "one", OnlyIf = new Condition { Models = ["G"], SerialTo = "2199", Mains = 120 } };
        Assert.Equal(["model (yes: G; no: F)", "serial (yes up to 2199, no from 2300)", "mains (yes: 120 V; no: 230 V)"],
            new SplitFinder(With([machine])).Find([limited], [Said(false) with { Machine = "one" }]));
    }

    [Fact]
    public void A_comparison_limited_to_a_family_or_a_position_of_it_speaks_of_that_family()
    {
        var finder = new SplitFinder(With([Machine("one", "second")]));
        var elsewhere = Said(false) with { Machine = "one" };
        Assert.Equal(["family (yes: The first family; no: The second family)"], finder.Find([Said(true) with { Where = "first" }], [elsewhere]));
        Assert.Equal(["family (yes: The first family; no: The second family)"], finder.Find([Said(true) with { Where = Here }], [elsewhere]));
    }

    [Fact]
    public void A_vague_date_is_not_before_a_day_within_it()
    {
        var finder = new SplitFinder(With([]));
        var (sure, vague) = (Said(false) with { Date = Day }, Said(true) with { Date = new PartialDate(2026, 0, 0) });
        Assert.Empty(finder.Find([vague], [sure]));
        Assert.Equal(["date (yes until 2025, no since 2026-02-11)"], finder.Find([vague with { Date = new PartialDate(2025, 0, 0) }], [sure]));
    }

    private static string Sentence(string plant, bool atPosition)
    {
        var library = With(Planted(plant, atPosition));
        return new Wording(library).Of(Judged(library, atPosition));
    }

    private static IReadOnlyList<string> Found(IEnumerable<IRecord> records)
    {
        var library = With(records);
        var fact = Judged(library, true);
        return new SplitFinder(library).Find(fact.Positives, fact.Negatives);
    }

    // Two machines and two claims for each side, alike but for the plant.
    private static IEnumerable<IRecord> Planted(string plant, bool atPosition)
    {
        var (yes, no) = plant switch
        {
            "model" => (Machine("x", model: "F"), Machine("x", model: "G")),
            "serial" => (Machine("x", serial: "2199"), Machine("x", serial: "2200")),
            "serial, later yes" => (Machine("x", serial: "2200"), Machine("x", serial: "2199")),
            "mains" => (Machine("x", mains: 230), Machine("x", mains: 120)),
            "family" => (Machine("x", "first"), Machine("x", "second")),
            _ => (Machine("x", model: "F", serial: "2199", mains: 230), Machine("x", model: "F", serial: "2199", mains: 230)),
        };
        var (yesDay, noDay) = plant switch
        {
            "date" => (Day, new PartialDate(2026, 3, 0)),
            "date, later yes" => (new PartialDate(2026, 3, 0), Day),
            _ => (Day, Day),
        };
        // A single machine on both sides, unless the machines are what differs.
        var apart = plant is not ("none" or "date" or "date, later yes");
        yield return yes with { Id = "one" };
        yield return no with { Id = "other" };
        yield return Claim("c1", true, atPosition, "one", yesDay);
        yield return Claim("c2", false, atPosition, apart ? "other" : "one", noDay);
        yield return Claim("c3", true, atPosition, "one", yesDay);
        yield return Claim("c4", false, atPosition, apart ? "other" : "one", noDay);
    }

    private static Statement Said(bool yes) => new()
    {
        Kind = StatementKind.Claim, Id = "c", Part = "part-a", Verdict = yes ? Verdict.Fits : Verdict.DoesNotFit, Basis = Basis.Seated, Shop = "shop",
    };
}
