namespace Crossref.Core.Lookup;

/// <summary>What a search may cost, so that no query reads a large library through.</summary>
internal static class SearchBudget
{
    /// <summary>The most postings visited in one walk along a table; about eight shards.</summary>
    public const int Walk = 50_000;

    /// <summary>The most words that the beginning of one stands for, in ordinal order.</summary>
    public const int Beginnings = 40;
}
