using Crossref.Site.Sharing.Combining;

namespace Crossref.Site.Tests.Sharing;

/// <summary>Random pairs and triples of edited copies of a folder, combined in every order.</summary>
public class CopiesTests
{
    private const int Runs = 30;

    private static readonly string[] Names = ["First", "Second", "Third"];

    private static readonly string[] Kinds = ["gear", "belt", "other"];

    private static Copy Base(string library) => Copy.Of(library)
        .With("families/ostrin-f2.yaml", Edits.Family)
        .With("parts/gears.yaml", "# Gears\r\npart: gear-1\r\nkind: gear\r\nname: First  \r\nlife: 4 sheets\r\n---\r\n# two\r\npart: gear-2\r\nkind: gear\r\nname: Second\r\n---\r\n\r\n# nothing but a remark\r\n---\r\npart: gear-3\r\nkind: gear\r\nname: Third")
        .With("notes/squeal.md", "---\ntitle: Squeal\n# why\n---\nOil it.\n\nOr not.\n")
        .With("claims/2025.yaml", "claim: c-1\npart: gear-1\nreplaces: gear-2\nverdict: fits\nbasis: seated\nby: M. Orr\ndate: 2025-02-11\n")
        .Note();

    /// <summary>Edits such as people make, each leaving a sound folder.</summary>
    private static void Edit(Copy copy, Random random, string who)
    {
        for (var i = random.Next(1, 5); i > 0; i--)
        {
            var word = $"{who} {random.Next(3)}";
            switch (random.Next(9))
            {
                case 0:
                    copy.Edit("parts/gears.yaml", t => System.Text.RegularExpressions.Regex.Replace(t, $"name: {Names[random.Next(3)]}", $"name: {word}"));
                    break;
                case 1:
                    copy.Edit("parts/gears.yaml", t => t.Replace("part: gear-2\r\n", $"part: gear-2\r\n# {word}\r\n", StringComparison.Ordinal));
                    break;
                case 2:
                    copy.Edit("families/ostrin-f2.yaml", t => t.Replace($"    name: {(random.Next(2) == 0 ? "Suction feed" : "Fold head")}\n", $"    name: {word}\n    cool: {random.Next(3)} min\n", StringComparison.Ordinal));
                    break;
                case 3:
                    copy.Edit("families/ostrin-f2.yaml", t => t.Contains($"position: new-{word[^1]}", StringComparison.Ordinal) ? t : t.Replace("      - position: feed-wheel\n", $"      # by {who}\n      - position: new-{word[^1]}\n        name: {word}\n        kind: {Kinds[random.Next(3)]}\n      - position: feed-wheel\n", StringComparison.Ordinal));
                    break;
                case 4:
                    copy.Edit("notes/squeal.md", t => random.Next(2) == 0 ? t.Replace("Oil it.", word + ".", StringComparison.Ordinal) : t.Replace("title: Squeal", $"title: {word}", StringComparison.Ordinal));
                    break;
                case 5:
                    copy.With($"claims/{who}-{word[^1]}.yaml", $"claim: {who}-{word[^1]}\npart: gear-1\nreplaces: gear-3\nverdict: fits\nbasis: told\nby: {who}\ndate: 2026-02-11\n");
                    break;
                case 6:
                    copy.Edit("parts/gears.yaml", t => t.Contains("retired", StringComparison.Ordinal) ? t : t.Replace("name: Second", "name: Second\r\nretired: true", StringComparison.Ordinal));
                    break;
                case 7:
                    copy.Edit("families/ostrin-f2.yaml", t => t.Replace("        locator: p. 22, item 5\n", "", StringComparison.Ordinal));
                    break;
                case 8 when random.Next(3) == 0:
                    copy.Note();
                    break;
            }
        }
    }

    private static void Same(Copy a, Copy b, string what)
    {
        var (one, other) = (a.Records(), b.Records());
        Assert.Equal(one.Keys.Order(StringComparer.Ordinal), other.Keys.Order(StringComparer.Ordinal));
        foreach (var (name, text) in one) Assert.True(Plain(text) == Plain(other[name]), $"{what}: {name}\n{text}\n----\n{other[name]}");
        Assert.Equal(a.Open(), b.Open());
    }

    private static string Plain(string text) => string.Join('\n', text.Split('\n').Select(l => l.TrimEnd()));

    [Fact]
    public void Copies_of_one_library_come_to_the_same_in_any_order_and_lose_nothing()
    {
        var (conflicts, merged) = (0, 0);
        for (var seed = 0; seed < Runs; seed++)
        {
            var random = new Random(seed);
            using var start = Base("ferry-lane");
            using var a = start.Again();
            using var b = start.Again();
            using var c = start.Again();
            foreach (var (copy, who) in new[] { (a, "orr"), (b, "finch"), (c, "assad") }) Edit(copy, random, who);
            var names = a.Records().Keys.Union(b.Records().Keys).Union(c.Records().Keys).Order(StringComparer.Ordinal).ToList();
            var comments = new[] { a, b, c }.SelectMany(x => x.Records().Values).SelectMany(t => t.Split('\n')).Select(l => l.Trim()).Where(l => l.StartsWith('#')).Distinct().ToList();

            using var ab = a.Again();
            var outcomes = ab.Combine(b).Decisions;
            using var ba = b.Again();
            ba.Combine(a);
            Same(ab, ba, $"seed {seed}, two");
            Assert.Empty(ab.Plan(b).Changes);
            Assert.Empty(ab.Plan(ba).Changes);

            using var abc = ab.Again();
            abc.Combine(c);
            using var cab = c.Again();
            cab.Combine(a);
            cab.Combine(b);
            using var bc = b.Again();
            bc.Combine(c);
            using var abc2 = a.Again();
            abc2.Combine(bc);
            Same(abc, cab, $"seed {seed}, three");
            Same(abc, abc2, $"seed {seed}, three, the other way round");
            Assert.Equal(names, abc.Records().Keys.Order(StringComparer.Ordinal));
            Assert.All(comments, line => Assert.Contains(abc.Records().Values, t => t.Contains(line, StringComparison.Ordinal)));
            Assert.Contains("---\r\n\r\n# nothing but a remark\r\n---\r\n", abc["parts/gears.yaml"], StringComparison.Ordinal);
            conflicts += abc.Open().Count > 0 ? 1 : 0;
            merged += outcomes.Any(d => d.Outcome == CombineOutcome.Merged) ? 1 : 0;
        }
        Assert.InRange(conflicts, Runs / 10, Runs - 1);
        Assert.InRange(merged, Runs / 10, Runs);
    }

    [Fact]
    public void Two_libraries_come_to_the_same_records_and_never_mix_what_is_a_shops()
    {
        for (var seed = 0; seed < Runs; seed++)
        {
            var random = new Random(seed);
            using var a = Base("ferry-lane");
            using var b = Base("velm-house");
            // Claims of both have the same ids and say different things.
            Edit(a, random, "orr");
            Edit(b, random, "orr");
            b.Edit("claims/2025.yaml", t => t.Replace("verdict: fits", "verdict: does-not-fit", StringComparison.Ordinal));
            var (ours, theirs) = (a.Records(), b.Records());
            using var before = a.Again();
            a.Combine(b);
            b.Combine(before);
            Assert.Equal(a.Records().Keys.Order(StringComparer.Ordinal), b.Records().Keys.Order(StringComparer.Ordinal));
            Assert.All(ours.Keys.Union(theirs.Keys), name => Assert.Contains(name, a.Records().Keys));
            foreach (var (name, text) in ours.Where(r => r.Key.Contains(':', StringComparison.Ordinal))) Assert.Equal((text, text), (a.Records()[name], b.Records()[name]));
            foreach (var (name, text) in theirs.Where(r => r.Key.Contains(':', StringComparison.Ordinal))) Assert.Equal((text, text), (a.Records()[name], b.Records()[name]));
            var once = a.Records();
            a.Combine(b);
            Assert.Empty(a.Plan(b).Changes);
            Assert.Equal(once.Keys, a.Records().Keys);
        }
    }
}
