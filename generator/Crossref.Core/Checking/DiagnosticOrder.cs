namespace Crossref.Core.Checking;

/// <summary>The order in which diagnostics are shown: by file, line, column and code, then by what they say.</summary>
public static class DiagnosticOrder
{
    /// <summary>Sorted, the exact repetitions dropped.</summary>
    public static IReadOnlyList<Diagnostic> Sort(IEnumerable<Diagnostic> diagnostics) =>
    [
        .. diagnostics.Distinct()
            .OrderBy(d => d.Place.File, StringComparer.Ordinal)
            .ThenBy(d => d.Place.Line)
            .ThenBy(d => d.Place.Column)
            .ThenBy(d => d.Code, StringComparer.Ordinal)
            .ThenBy(d => d.Message, StringComparer.Ordinal),
    ];
}
