namespace Crossref.Site.Pages.Views;

/// <summary>A record of which copies differ.</summary>
/// <param name="Record">The record.</param>
/// <param name="File">The file to delete once it is settled.</param>
/// <param name="Keys">Where copies differ.</param>
public sealed record OpenConflict(Phrase Record, string File, IReadOnlyList<OpenKey> Keys);

/// <summary>A key at which copies differ.</summary>
/// <param name="Name">The keys that lead to it.</param>
/// <param name="Choices">What copies say there.</param>
public sealed record OpenKey(string Name, IReadOnlyList<OpenChoice> Choices);

/// <summary>What one copy says.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Library">In which library it was written.</param>
/// <param name="Date">When it was noted there.</param>
/// <param name="InForce">Whether it counts until somebody chooses.</param>
public sealed record OpenChoice(string Text, string Library, string Date, bool InForce);
