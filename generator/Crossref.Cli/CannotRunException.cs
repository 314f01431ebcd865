namespace Crossref.Cli;

/// <summary>The command cannot do its work; says why, and what to do.</summary>
public sealed class CannotRunException(string message, string hint) : Exception(message)
{
    /// <summary>What to do.</summary>
    public string Hint { get; } = hint;
}
