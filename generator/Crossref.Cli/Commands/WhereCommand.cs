using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Interchange;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref where</c>: where else a part fits, and what may stand in for it.</summary>
internal static class WhereCommand
{
    internal static Command Create(CommonOptions options)
    {
        var part = new Argument<string>("PART") { Description = "The part, by its id or by a number on it" };
        var command = new Command("where", "Say where else a part fits, and what may stand in for it.") { part };
        command.SetAction(parsed =>
        {
            if (Workspace.Open(options, parsed).LibraryOrErrors(parsed) is not { } library) return ExitCode.Findings;
            var answer = new WhereUsed(library, new Fits(library)).Of(Known.Part(library, parsed.GetValue(part)!));
            var output = parsed.InvocationConfiguration.Output;
            if (options.Json(parsed)) JsonPrinter.Print(WherePrinter.ToJson(answer), output);
            else new WherePrinter(library).Print(answer, output);
            return ExitCode.Fine;
        });
        return command;
    }
}
