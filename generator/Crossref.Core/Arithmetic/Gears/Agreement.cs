namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Whether two gears agree in something.</summary>
public enum Agreement
{
    /// <summary>They agree, whatever the true values are.</summary>
    Agrees,
    /// <summary>They differ, whatever the true values are.</summary>
    Differs,
    /// <summary>Not known, or not measured closely enough to tell.</summary>
    Unknown,
}
