using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>One page before it is written.</summary>
/// <param name="Path">Where it lives.</param>
/// <param name="Template">The template of its kind.</param>
/// <param name="Kind">What kind of page it is, in a word or two.</param>
/// <param name="Title">Its title and first heading.</param>
/// <param name="Crumbs">The way to it from the first page.</param>
/// <param name="View">What it shows.</param>
internal sealed record Sheet(string Path, string Template, string Kind, string Title, IReadOnlyList<Link> Crumbs, object View)
{
    /// <summary>The reference in the title block; the title where there is nothing more exact.</summary>
    internal string? Reference { get; init; }

    /// <summary>Scripts that only this kind of page loads, after those that every page does.</summary>
    internal IReadOnlyList<string> Scripts { get; init; } = [];
}
