namespace Crossref.Site.Pages.Views;

/// <summary>Something that has a yes and a no.</summary>
/// <param name="What">The part and where, or in place of what.</param>
/// <param name="Reason">Why, in a sentence, with what tells the two apart.</param>
public sealed record DisputeView(Phrase What, string Reason);
