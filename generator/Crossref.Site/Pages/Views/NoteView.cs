using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Views;

/// <summary>A note.</summary>
/// <param name="Body">The note itself.</param>
/// <param name="About">What it speaks of.</param>
public sealed record NoteView(Markup Body, IReadOnlyList<Link> About);
