namespace Crossref.Site.Pages.Views;

/// <summary>A machine in a list.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Id">Its id.</param>
/// <param name="Family">Its family.</param>
/// <param name="Facts">Its model, serial and mains.</param>
/// <param name="Reading">Its latest reading.</param>
public sealed record MachineLine(Link Machine, string Id, Link Family, string Facts, string Reading);
