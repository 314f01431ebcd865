using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Interchange;
using Crossref.Core.Lookup;
using Crossref.Core.Records;

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
            var answer = new WhereUsed(library, new Fits(library)).Of(Resolve(library, parsed.GetValue(part)!));
            var output = parsed.InvocationConfiguration.Output;
            if (options.Json(parsed)) JsonPrinter.Print(WherePrinter.ToJson(answer), output);
            else new WherePrinter(library).Print(answer, output);
            return ExitCode.Fine;
        });
        return command;
    }

    private static string Resolve(Library library, string text)
    {
        if (library.Parts.ContainsKey(text)) return text;
        var wanted = NumberForm.Of(text);
        var found = library.Parts.Values.Where(p => p.AllNumbers.Any(n => NumberForm.Of(n) == wanted)).Select(p => p.Id).Order(StringComparer.Ordinal).ToList();
        if (found.Count == 1) return found[0];
        if (found.Count > 1) throw new CannotRunException($"{text} is a number of several parts.", "Name one of them: " + string.Join(", ", found));
        Known.Require(text, library.Parts.Keys, "part", "crossref find WORDS looks parts up.");
        return text;
    }
}
