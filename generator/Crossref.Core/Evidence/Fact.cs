using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>A fact as it is judged for one machine: every statement sorted into what it does, and what comes of it.</summary>
public sealed record Fact
{
    /// <summary>The fact of which nothing is said.</summary>
    public static Fact Nothing { get; } = new();
    /// <summary>What the statements come to.</summary>
    public FactState State { get; init; }
    /// <summary>The rank it stands with; null unless it stands.</summary>
    public Basis? Standing => State == FactState.Stands ? Leading!.Basis : null;
    /// <summary>The positive statement whose conditions and change are carried; null when there is none.</summary>
    public Statement? Leading { get; init; }
    /// <summary>Positive statements that count, the leading one first.</summary>
    public IReadOnlyList<Statement> Positives { get; init; } = [];
    /// <summary>Negative statements that count, strongest first.</summary>
    public IReadOnlyList<Statement> Negatives { get; init; } = [];
    /// <summary>Negative statements that do not count because nobody knows whether they speak of this machine.</summary>
    public IReadOnlyList<Statement> Exceptions { get; init; } = [];
    /// <summary>Terms of the leading statement that nobody knows to hold: to be checked first.</summary>
    public IReadOnlyList<Term> CheckFirst { get; init; } = [];
    /// <summary>Whether a safety rule decided: any negative that counts rules out.</summary>
    public bool Safety { get; init; }
}
