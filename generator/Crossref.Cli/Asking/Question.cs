namespace Crossref.Cli.Asking;

/// <summary>One question, and what is known about its answer once the questions before it are answered.</summary>
/// <param name="Field">The field that the answer fills.</param>
/// <param name="Text">The question.</param>
internal sealed record Question(string Field, string Text)
{
    /// <summary>Whether it matters at all.</summary>
    internal Func<IReadOnlyDictionary<string, string>, bool> Applies { get; init; } = _ => true;
    /// <summary>Answers to choose from.</summary>
    internal Func<IReadOnlyDictionary<string, string>, IReadOnlyList<Choice>> Offers { get; init; } = _ => [];
    /// <summary>What Enter takes; null when it takes nothing.</summary>
    internal Func<IReadOnlyDictionary<string, string>, string?> Default { get; init; } = _ => null;
    /// <summary>The value of what was typed; a <see cref="CannotRunException"/> says what is wrong with it.</summary>
    internal Func<string, IReadOnlyDictionary<string, string>, string> Read { get; init; } = (text, _) => text;
    /// <summary>Whether a dash leaves it out.</summary>
    internal bool Optional { get; init; }
}
