using Markdig;

namespace Crossref.Site.Reading.Notes;

/// <summary>
/// The one dialect of Markdown that notes are written in, for reading and for showing alike: CommonMark with tables.
/// Bare addresses are not turned into links, since nothing on the site leads out of it.
/// </summary>
internal static class NotePipeline
{
    internal static MarkdownPipeline Instance { get; } = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();
}
