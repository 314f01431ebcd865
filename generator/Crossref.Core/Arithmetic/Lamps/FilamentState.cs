namespace Crossref.Core.Arithmetic.Lamps;

/// <summary>What a meter on a cold lamp can tell, and no more: it proves neither volts nor watts.</summary>
public enum FilamentState
{
    /// <summary>It reads more than the filament has when hot: open, or a bad contact.</summary>
    Open,
    /// <summary>Whole, and as many ohms as a lamp of that rating may have.</summary>
    Plausible,
    /// <summary>Whole as far as the meter goes, but fewer or more ohms than a lamp of that rating has.</summary>
    Implausible,
    /// <summary>Whole, but the reading is too doubtful to say whether it suits the rating.</summary>
    CannotTell,
}
