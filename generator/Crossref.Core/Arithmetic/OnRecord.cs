namespace Crossref.Core.Arithmetic;

/// <summary>What calculators may look up in the library: the places that turn.</summary>
/// <param name="Turning">Every position of which it is known how far the sheet goes in one turn, by address.</param>
public sealed record OnRecord(IReadOnlyList<TurningPlace> Turning)
{
    /// <summary>No library at hand.</summary>
    public static OnRecord Nothing { get; } = new([]);
}
