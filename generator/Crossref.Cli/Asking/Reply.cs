namespace Crossref.Cli.Asking;

/// <summary>A reply.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">The answer; null for none.</param>
internal readonly record struct Reply(ReplyKind Kind, string? Value = null);
