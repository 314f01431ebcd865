namespace Crossref.Site.Pages.Views;

/// <summary>The deciding sizes of several parts side by side.</summary>
/// <param name="Columns">The attributes.</param>
/// <param name="Rows">The parts.</param>
/// <param name="Caption">What is compared with what.</param>
public sealed record SizeTable(IReadOnlyList<string> Columns, IReadOnlyList<SizeRow> Rows, string Caption);
