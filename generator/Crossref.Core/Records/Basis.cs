namespace Crossref.Core.Records;

/// <summary>What a statement rests on; the number is its rank, the strongest is the highest.</summary>
public enum Basis
{
    /// <summary>Somebody said so.</summary>
    Told = 1,
    /// <summary>A seller offers it for this.</summary>
    Offered = 2,
    /// <summary>Every deciding size was measured.</summary>
    Measured = 3,
    /// <summary>The same number is moulded or printed on both.</summary>
    Moulded = 4,
    /// <summary>It was fitted and turned by hand.</summary>
    Seated = 5,
    /// <summary>It ran with paper.</summary>
    Ran = 6,
    /// <summary>It ran long enough, its neighbours undamaged. Never written, only reached.</summary>
    Proven = 7,
    /// <summary>The maker's own document or a standard says so.</summary>
    Documented = 8,
}
