namespace Crossref.Core.Interchange;

/// <summary>Where a part fits, and what may stand in for it or be replaced by it.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Fits">Positions that it fits or may be tried at, best first.</param>
/// <param name="Refused">Positions at which it is disputed or ruled out, in order of address.</param>
/// <param name="StandIns">Parts that may go in instead of it.</param>
/// <param name="StandsInFor">Parts that it may go in for.</param>
public sealed record WhereAnswer(
    string Part, IReadOnlyList<WhereFit> Fits, IReadOnlyList<WhereRefusal> Refused,
    IReadOnlyList<StandIn> StandIns, IReadOnlyList<StandIn> StandsInFor);
