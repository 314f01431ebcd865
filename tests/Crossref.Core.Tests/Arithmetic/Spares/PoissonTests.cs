using CsCheck;
using Crossref.Core.Arithmetic.Spares;

namespace Crossref.Core.Tests.Arithmetic.Spares;

public class PoissonTests
{
    private static readonly Gen<double> Mean = Gen.Double[0.001, Poisson.Most];
    private static readonly Gen<int> Count = Gen.Int[0, Poisson.Most];

    // Another road to the same figure: no more than k fail with the probability that the (k + 1)-th comes after the mean,
    // the integral of x^k e^-x / k! from the mean on. Summed by Simpson's rule, in logarithms.
    [Fact]
    public void The_sum_is_the_integral() =>
        Gen.Select(Gen.Int[0, 60], Gen.Double[0.01, 80]).Sample((count, mean) => Assert.Equal(Integral(count, mean), Poisson.AtMost(count, mean), 6));

    [Fact]
    public void More_spares_cover_more_and_more_failures_leave_less() =>
        Gen.Select(Count, Mean, Mean).Sample((count, one, other) =>
        {
            Assert.InRange(Poisson.AtMost(count, one), 0, 1);
            Assert.True(Poisson.AtMost(count, one) <= Poisson.AtMost(count + 1, one));
            Assert.True(Poisson.AtMost(count, Math.Max(one, other)) <= Poisson.AtMost(count, Math.Min(one, other)) + 1e-12);
        });

    [Fact]
    public void The_fewest_are_enough_and_one_fewer_is_not() =>
        Gen.Select(Mean, Gen.Double[0.5, 0.999]).Sample((mean, level) =>
        {
            var fewest = Poisson.Fewest(mean, level);
            Assert.True(Poisson.AtMost(fewest, mean) >= level - 1e-12);
            Assert.True(fewest == 0 || Poisson.AtMost(fewest - 1, mean) < level);
        });

    [Fact]
    public void The_mean_found_has_the_probability_asked_for() =>
        Gen.Select(Count, Gen.Double[0.001, 0.999]).Sample((count, probability) =>
            Assert.Equal(probability, Poisson.AtMost(count, Poisson.MeanAt(count, probability)), 9));

    // What "95 % sure" promises: of all means, whichever is the true one, the counts whose bounds leave it out are rare.
    [Fact]
    public void Bounds_leave_out_the_true_mean_at_most_once_in_twenty() =>
        Gen.Double[0.01, 150].Sample(mean =>
        {
            var missed = Enumerable.Range(0, Poisson.Most).Where(k => !FailureCount.Bounds(k).Holds(mean)).Sum(k => Poisson.AtMost(k, mean) - (k == 0 ? 0 : Poisson.AtMost(k - 1, mean)));
            Assert.InRange(missed, 0, 0.05 + 1e-9);
        }, iter: 30);

    private static double Integral(int count, double mean)
    {
        const int steps = 20_000;
        var logFactorial = Enumerable.Range(1, count).Sum(i => Math.Log(i));
        var (width, sum) = ((count + 300.0) / steps, 0.0);
        for (var i = 0; i <= steps; i++)
        {
            var x = mean + (i * width);
            sum += Math.Exp((count * Math.Log(x)) - x - logFactorial) * (i is 0 or steps ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * width / 3;
    }
}
