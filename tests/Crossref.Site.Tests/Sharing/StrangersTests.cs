using Crossref.Site.Sharing;

namespace Crossref.Site.Tests.Sharing;

/// <summary>Two shops' PCs that gave one id to two things.</summary>
public class StrangersTests
{
    private const string Bearing = "part: new-1\nkind: bearing\nmaker: Velm\nname: Bearing\nnumbers: [VM-1]\n";
    private const string Gear = "part: new-1\nkind: gear\nmaker: Ostrin\nname: Gear\nnumbers: [OS-2]\n";
    private const string Belt = "part: new-1\nkind: belt\nmaker: Tarrock\nname: Belt\nnumbers: [TR-3]\n";

    [Fact]
    public void Two_things_of_one_id_stand_to_be_chosen_as_a_whole_and_never_mix()
    {
        using var one = Copy.Of("ferry-lane").With("new.yaml", Bearing);
        using var other = Copy.Of("ferry-lane").With("new.yaml", Gear);
        one.Combine(other);
        other.Combine(one);
        Assert.Equal(Gear, one["new.yaml"]);
        Assert.Equal(Gear, other["new.yaml"]);
        Assert.Equal([Bearing, Gear], Texts(one));
        Assert.Equal(Texts(one), Texts(other));
        Assert.Empty(one.Plan(other).Changes);
    }

    // They say of one thing the same that it is, and each something more.
    [Fact]
    public void One_thing_that_two_wrote_down_is_joined_by_its_keys()
    {
        using var one = Copy.Of("ferry-lane").With("new.yaml", Bearing + "price: 4\n");
        using var other = Copy.Of("ferry-lane").With("new.yaml", Bearing + "life: 5 sheets\n");
        one.Combine(other);
        Assert.Contains("price: 4\n", one["new.yaml"], StringComparison.Ordinal);
        Assert.Contains("life: 5 sheets\n", one["new.yaml"], StringComparison.Ordinal);
        Assert.Empty(one.Open());
    }

    [Theory]
    [InlineData(0, 1, 2)]
    [InlineData(0, 2, 1)]
    [InlineData(1, 0, 2)]
    [InlineData(1, 2, 0)]
    [InlineData(2, 0, 1)]
    [InlineData(2, 1, 0)]
    public void Three_things_of_one_id_are_all_there_in_whatever_order_they_come(int first, int second, int third)
    {
        string[] texts = [Bearing, Gear, Belt];
        Copy[] copies = [.. new[] { first, second, third }.Select(i => Copy.Of("ferry-lane").With("new.yaml", texts[i]))];
        copies[0].Combine(copies[1]);
        copies[2].Combine(copies[1]);
        copies[0].Combine(copies[2]);
        Assert.Equal([Bearing, Belt, Gear], Texts(copies[0]));
        Assert.Equal(Gear, copies[0]["new.yaml"]);
        copies[1].Combine(copies[0]);
        Assert.Equal(Texts(copies[0]), Texts(copies[1]));
        Assert.Empty(copies[1].Plan(copies[0]).Changes);
        foreach (var copy in copies) copy.Dispose();
    }

    [Theory]
    [InlineData(0, 1, 2)]
    [InlineData(0, 2, 1)]
    [InlineData(1, 2, 0)]
    [InlineData(2, 0, 1)]
    public void What_is_open_at_one_key_is_not_lost_when_something_else_of_that_id_comes(int first, int second, int third)
    {
        string[] texts = [Bearing + "price: 4\n", Bearing + "price: 5\n", Gear];
        Copy[] copies = [.. new[] { first, second, third }.Select(i => Copy.Of("ferry-lane").With("new.yaml", texts[i]))];
        copies[0].Combine(copies[1]);
        copies[0].Combine(copies[2]);
        Assert.Equal(texts, Texts(copies[0]));
        Assert.Empty(copies[0].Plan(copies[2]).Changes);
        foreach (var copy in copies) copy.Dispose();
    }

    [Fact]
    public void What_was_changed_where_the_choice_is_not_known_is_one_more_to_choose_from_and_the_choice_holds_elsewhere()
    {
        using var one = Copy.Of("ferry-lane").With("new.yaml", Bearing);
        using var other = Copy.Of("ferry-lane").With("new.yaml", Gear).Note();
        using var late = other.Again();
        one.Combine(other);
        other.Combine(one);
        late.Edit("new.yaml", t => t + "price: 4\n");
        other.Combine(late);
        Assert.Equal(Gear + "price: 4\n", other["new.yaml"]);
        Assert.Equal([Bearing, Gear, Gear + "price: 4\n"], Texts(other));

        var chooser = Chooser.Read(one.Folder, Copy.Day);
        var open = Assert.Single(chooser.Open);
        Assert.Null(chooser.Choose(open, Assert.Single(open.Keys), open.Keys[0].Choices.ToList().FindIndex(c => c.Text == Bearing) + 1));
        one.Apply(chooser.Changes);
        Assert.Equal(Bearing, one["new.yaml"]);
        Assert.Empty(one.Open());
        one.Combine(late);
        Assert.Equal([Bearing, Gear + "price: 4\n"], Texts(one));
    }

    [Fact]
    public void Another_librarys_thing_of_that_id_is_offered_and_ours_stays_in_force()
    {
        using var ours = Copy.Of("ferry-lane").With("new.yaml", Bearing);
        using var theirs = Copy.Of("mill-lane").With("new.yaml", Gear);
        ours.Combine(theirs);
        Assert.Equal(Bearing, ours["new.yaml"]);
        Assert.Equal([Bearing, Gear], Texts(ours));
    }

    private static IReadOnlyList<string?> Texts(Copy copy) =>
        [.. Assert.Single(Assert.Single(Chooser.Read(copy.Folder, Copy.Day).Open).Keys).Choices.Select(c => c.Text).Order(StringComparer.Ordinal)];
}
