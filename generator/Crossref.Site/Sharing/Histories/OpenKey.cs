namespace Crossref.Site.Sharing.Histories;

/// <summary>A key at which copies differ and somebody has to choose.</summary>
/// <param name="Key">The key.</param>
/// <param name="Choices">What may stand there: the one in force first.</param>
internal sealed record OpenKey(string Key, IReadOnlyList<Choice> Choices)
{
    /// <summary>The key of the same name that stands there in another form, which the first choice keeps; null for none.</summary>
    internal string? Kept { get; init; }

    /// <summary>The key that goes when a choice between two forms is made; null when there is but one form.</summary>
    internal string? GoneBy(int number) => Kept is null ? null : number == 0 ? Key : Kept;
}

/// <summary>One of several things that may stand at a key.</summary>
/// <param name="Text">The lines; null for leaving the key out.</param>
/// <param name="Library">In which library it was written.</param>
/// <param name="Date">When that was noted.</param>
internal sealed record Choice(string? Text, string Library, string Date);
