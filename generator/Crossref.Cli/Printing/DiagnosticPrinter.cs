using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Core.Checking;
using Crossref.Core.Records;

namespace Crossref.Cli.Printing;

/// <summary>Prints diagnostics for people and for programs.</summary>
internal static class DiagnosticPrinter
{
    internal static void Print(IReadOnlyList<Diagnostic> diagnostics, TextWriter output)
    {
        PrintLines(diagnostics, output);
        output.WriteLine(Total(diagnostics));
    }

    internal static string Total(IReadOnlyList<Diagnostic> diagnostics)
    {
        var errors = diagnostics.Count(d => d.Severity == Severity.Error);
        return diagnostics.Count == 0 ? "Nothing to mend." : $"{Number(errors, "error")}, {Number(diagnostics.Count - errors, "warning")}.";
    }

    /// <summary>Why nothing was done: in words for people, and for a program that asked for JSON in the form in which <c>check</c> prints it.</summary>
    internal static void PrintRefusal(IReadOnlyList<Diagnostic> diagnostics, bool json, InvocationConfiguration to)
    {
        Print(diagnostics, to.Error);
        if (json) JsonPrinter.Print(ToJson(diagnostics), to.Output);
    }

    internal static void PrintLines(IReadOnlyList<Diagnostic> diagnostics, TextWriter output)
    {
        foreach (var diagnostic in diagnostics) output.WriteLine(DiagnosticText.Format(diagnostic));
    }

    internal static JsonObject ToJson(IReadOnlyList<Diagnostic> diagnostics) => AddTo([], diagnostics);

    /// <summary>Adds what is wrong to a command's answer.</summary>
    internal static JsonObject AddTo(JsonObject answer, IReadOnlyList<Diagnostic> diagnostics)
    {
        answer["errors"] = diagnostics.Count(d => d.Severity == Severity.Error);
        answer["warnings"] = diagnostics.Count(d => d.Severity == Severity.Warning);
        answer["diagnostics"] = JsonPrinter.Array(diagnostics, d => new JsonObject
        {
            ["code"] = d.Code,
            ["severity"] = Words.Of(d.Severity),
            ["file"] = d.Place.File,
            ["line"] = d.Place.Line,
            ["column"] = d.Place.Column,
            ["message"] = d.Message,
            ["hint"] = d.Hint,
        });
        return answer;
    }

    internal static string Number(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";
}
