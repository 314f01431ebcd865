using System.CommandLine;
using Crossref.Cli.Printing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref check</c>: every diagnostic.</summary>
internal static class CheckCommand
{
    internal static Command Create(CommonOptions options)
    {
        var command = new Command("check", "Read every record and note and say what is wrong, where, and what to do about it.");
        command.SetAction(parsed =>
        {
            var workspace = Workspace.Open(options, parsed, inbox: true);
            var output = parsed.InvocationConfiguration.Output;
            if (options.Json(parsed)) JsonPrinter.Print(DiagnosticPrinter.ToJson(workspace.Diagnostics), output);
            else DiagnosticPrinter.Print(workspace.Diagnostics, output);
            return workspace.HasErrors ? ExitCode.Findings : ExitCode.Fine;
        });
        return command;
    }
}
