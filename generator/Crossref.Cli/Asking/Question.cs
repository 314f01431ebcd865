using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>One question, and what is known about its answer.</summary>
/// <param name="Answers">Where the answer goes.</param>
/// <param name="Field">The field that it fills there.</param>
/// <param name="Text">The question.</param>
internal sealed record Question(Dictionary<string, string> Answers, string Field, string Text)
{
    /// <summary>As a default: Enter leaves it out.</summary>
    internal const string None = "-";

    /// <summary>Answers to choose from.</summary>
    internal IReadOnlyList<Choice> Offers { get; init; } = [];
    /// <summary>What Enter takes; null when it takes nothing.</summary>
    internal string? Default { get; init; }
    /// <summary>The value of what was typed; a <see cref="CannotRunException"/> says what is wrong with it.</summary>
    internal Func<string, string> Read { get; init; } = text => text;
    /// <summary>What a dash says, which leaves it out; null where it must be answered.</summary>
    internal string? Without { get; init; }
    /// <summary>What is to be said before it is asked, about the answers before.</summary>
    internal string? Remark { get; init; }

    /// <summary>A question that one of an enumeration's words answers.</summary>
    internal static Question OfWords<T>(Dictionary<string, string> answers, string field, string text, T usual, Func<T, string>? says = null, params T[] except) where T : struct, Enum
    {
        var values = Enum.GetValues<T>().Except(except).ToList();
        return new Question(answers, field, text)
        {
            Offers = [.. values.Select(v => new Choice(Words.Of(v), says?.Invoke(v) ?? ""))],
            Default = Words.Of(usual),
            Read = typed => Knowledge.Require(typed, values.Select(Words.Of), "word"),
        };
    }
}
