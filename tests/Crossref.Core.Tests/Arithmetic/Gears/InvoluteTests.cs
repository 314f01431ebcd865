using Crossref.Core.Arithmetic.Gears;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

public class InvoluteTests
{
    [Fact]
    public void The_inverse_leads_back() =>
        Gen.Double[0, 60].Sample(angle => Math.Abs(Involute.Inverse(Involute.Of(angle)) - angle) < 1e-6);

    [Fact]
    public void The_inverse_of_nothing_is_nothing() => Assert.Equal(0, Involute.Inverse(0));

    [Theory]
    [InlineData(-0.001)]
    [InlineData(1.001)]
    [InlineData(double.NaN)]
    public void What_is_no_involute_is_refused(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => Involute.Inverse(value));

    // A thread that is unrolled from a circle: the angle between where it began and its end, from their coordinates.
    [Fact]
    public void It_is_the_angle_that_an_unrolled_thread_has_turned_by() =>
        Gen.Double[0.1, 60].Sample(angle =>
        {
            var rolled = Math.Tan(angle * Math.PI / 180);
            var (x, y) = (Math.Cos(rolled) + rolled * Math.Sin(rolled), Math.Sin(rolled) - rolled * Math.Cos(rolled));
            return Math.Abs(Math.Atan2(y, x) - Involute.Of(angle)) < 1e-12;
        });
}
