namespace Crossref.Core.Evidence;

/// <summary>What all statements about a fact come to.</summary>
public enum FactState
{
    /// <summary>Nothing that counts is said.</summary>
    Nothing,
    /// <summary>It stands, with the rank of its best positive statement.</summary>
    Stands,
    /// <summary>The best positive and the best negative are of one rank.</summary>
    Disputed,
    /// <summary>The best negative is stronger, or a negative counts where safety is concerned.</summary>
    RuledOut,
}
