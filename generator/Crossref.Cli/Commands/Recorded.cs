using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary>New records and what they change.</summary>
/// <param name="Proposal">The records.</param>
/// <param name="Before">How the parts they speak of stood.</param>
/// <param name="After">How they stand with them, in the same order.</param>
internal sealed record Recorded(Proposal Proposal, IReadOnlyList<Standing> Before, IReadOnlyList<Standing> After);
