using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>Diagnostics in words, the same on every screen and in every file.</summary>
public static class DiagnosticText
{
    /// <summary>Two lines: <c>file:line:column: error CR0101: message</c>, then the hint, indented.</summary>
    public static string Format(Diagnostic diagnostic) =>
        $"{diagnostic.Place}: {Words.Of(diagnostic.Severity)} {diagnostic.Code}: {diagnostic.Message}\n    {diagnostic.Hint}";

    /// <summary>All of them, one after another, each line ended by a line feed.</summary>
    public static string Format(IEnumerable<Diagnostic> diagnostics) =>
        string.Concat(diagnostics.Select(d => Format(d) + "\n"));
}
