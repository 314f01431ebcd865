namespace Crossref.Core.Arithmetic.Rolling;

/// <summary>A place that turns, held against marks that repeat.</summary>
/// <param name="Place">The place.</param>
/// <param name="Misfit">How much more it is around than the marks say, in percent, middle against middle; less when negative.</param>
/// <param name="Suspect">Whether it lies inside the tolerance.</param>
public sealed record RepeatMatch(TurningPlace Place, double Misfit, bool Suspect)
{
    /// <summary>Every place, suspects first, each by how far off it is, then by address.</summary>
    /// <param name="places">The places.</param>
    /// <param name="around">Once around by the marks, in millimetres.</param>
    /// <param name="percent">The tolerance to either side.</param>
    public static IReadOnlyList<RepeatMatch> Of(IEnumerable<TurningPlace> places, Interval around, Interval percent)
    {
        var band = Repeat.Within(around, percent);
        return
        [
            .. places.Select(p => new RepeatMatch(p, (p.Around.Middle - around.Middle) / around.Middle * 100, p.Around.Low <= band.High + 1e-9 && band.Low <= p.Around.High + 1e-9))
                .OrderByDescending(m => m.Suspect).ThenBy(m => Math.Abs(m.Misfit)).ThenBy(m => m.Place.Position, StringComparer.Ordinal),
        ];
    }
}
