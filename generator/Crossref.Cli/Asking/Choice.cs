namespace Crossref.Cli.Asking;

/// <summary>An answer that is offered.</summary>
/// <param name="Value">What it stands for.</param>
/// <param name="Label">What the list says of it besides.</param>
internal sealed record Choice(string Value, string Label)
{
    /// <summary>What the list calls it.</summary>
    internal string Name { get; init; } = Value;
}
