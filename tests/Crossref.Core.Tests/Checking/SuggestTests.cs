using Crossref.Core.Checking;
using CsCheck;

namespace Crossref.Core.Tests.Checking;

public class SuggestTests
{
    private static readonly Gen<string> Word = Gen.Char["abc-"].Array[0, 6].Select(c => new string(c));

    [Theory]
    [InlineData("gear", "gear", 0)]
    [InlineData("gaer", "gear", 1)]
    [InlineData("gea", "gear", 1)]
    [InlineData("gears", "gear", 1)]
    [InlineData("bear", "gear", 1)]
    [InlineData("", "gear", 4)]
    [InlineData("ca", "abc", 3)] // optimal string alignment does not touch a swapped pair again
    public void Distance_counts_slips(string left, string right, int expected) => Assert.Equal(expected, Suggest.Distance(left, right));

    [Fact]
    public void Distance_agrees_with_its_definition() =>
        Gen.Select(Word, Word).Sample((a, b) => Assert.Equal(Naive(a, b), Suggest.Distance(a, b)));

    [Fact]
    public void Distance_is_the_same_both_ways() =>
        Gen.Select(Word, Word).Sample((a, b) => Suggest.Distance(a, b) == Suggest.Distance(b, a));

    [Fact]
    public void Nearest_comes_first_and_ties_are_in_ordinal_order() =>
        Assert.Equal(["gear", "bear", "dear"], Suggest.Nearest("gear", ["dear", "bear", "roller", "gear", "near"]));

    [Fact]
    public void Nothing_far_is_suggested()
    {
        Assert.Empty(Suggest.Nearest("widget", ["part", "claim", "machine"]));
        Assert.Empty(Suggest.Nearest("at", ["by"]));
        Assert.Equal("write one", Suggest.Hint("widget", ["part"], "write one"));
    }

    [Fact]
    public void Case_does_not_count() => Assert.Equal("did you mean 'brg-1'?", Suggest.Hint("BRG-1", ["brg-1"], ""));

    [Fact]
    public void A_word_is_surely_meant_only_when_no_other_is_as_near()
    {
        Assert.Equal("bearing", Suggest.Surely("baering", ["bearing", "gear"]));
        Assert.Null(Suggest.Surely("brg-3", ["brg-1", "brg-2"]));
    }

    // The definition, unrolled by recursion.
    private static int Naive(string a, string b)
    {
        if (a.Length == 0 || b.Length == 0) return a.Length + b.Length;
        var best = Math.Min(Math.Min(Naive(a[..^1], b), Naive(a, b[..^1])) + 1, Naive(a[..^1], b[..^1]) + (a[^1] == b[^1] ? 0 : 1));
        return a.Length > 1 && b.Length > 1 && a[^1] == b[^2] && a[^2] == b[^1] ? Math.Min(best, Naive(a[..^2], b[..^2]) + 1) : best;
    }
}
