namespace Crossref.Core.Interchange;

/// <summary>The words for how a part stands somewhere, beside those of <see cref="Records.Basis"/>.</summary>
public static class StandingWord
{
    /// <summary>Something to try, never an answer.</summary>
    public const string Lead = "lead";
    /// <summary>Yes and no rest on evidence of the same strength.</summary>
    public const string Disputed = "disputed";
    /// <summary>The no is stronger.</summary>
    public const string RuledOut = "ruled out";
    /// <summary>Nobody has said anything.</summary>
    public const string Nothing = "nothing";
}
