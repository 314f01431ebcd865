using Crossref.Site.Sharing;

namespace Crossref.Cli.Commands;

/// <summary>What somebody chose.</summary>
/// <param name="Record">The record of which copies differ.</param>
/// <param name="Key">The key.</param>
/// <param name="Number">The number of the text, from 1.</param>
internal sealed record Chosen(Conflict Record, ConflictKey Key, int Number);
