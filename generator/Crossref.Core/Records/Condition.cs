namespace Crossref.Core.Records;

/// <summary>An <c>only-if</c>: the machines a statement speaks of. Every part that is given must hold.</summary>
public sealed record Condition
{
    /// <summary>No condition at all.</summary>
    public static Condition None { get; } = new();
    /// <summary>Models, any of them; empty when any model will do.</summary>
    public IReadOnlyList<string> Models { get; init; } = [];
    /// <summary>First serial, inclusive; null when open.</summary>
    public string? SerialFrom { get; init; }
    /// <summary>Last serial, inclusive; null when open.</summary>
    public string? SerialTo { get; init; }
    /// <summary>Mains voltage in volts; null when any will do.</summary>
    public decimal? Mains { get; init; }
    /// <summary>Where it is written.</summary>
    public Place Place { get; init; }

    /// <summary>Whether nothing is demanded.</summary>
    public bool IsNone => Models.Count == 0 && SerialFrom is null && SerialTo is null && Mains is null;

    /// <summary>Whether both demand the same, wherever they are written and in whatever order the models stand.</summary>
    public bool SameAs(Condition other) =>
        SerialFrom == other.SerialFrom && SerialTo == other.SerialTo && Mains == other.Mains &&
        Models.ToHashSet(StringComparer.Ordinal).SetEquals(other.Models);
}
