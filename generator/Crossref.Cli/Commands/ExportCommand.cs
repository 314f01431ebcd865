using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;
using Crossref.Site.Sheets;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref export</c>: sheets for a spreadsheet.</summary>
internal static class ExportCommand
{
    internal static Command Create(CommonOptions options)
    {
        var folder = new Option<string>("--out") { Description = "The folder for the sheets", HelpName = "DIR", DefaultValueFactory = _ => "sheets" };
        var command = new Command("export", "Write the parts, bags, claims and positions as CSV files for a spreadsheet.") { folder };
        command.SetAction(parsed =>
        {
            if (Workspace.Open(options, parsed).LibraryOrErrors(parsed) is not { } library) return ExitCode.Findings;
            var (output, sheets) = (parsed.InvocationConfiguration.Output, Path.GetFullPath(parsed.GetValue(folder)!));
            try
            {
                var changes = SheetExport.Write(library, sheets, options.Disk);
                var files = SheetExport.Names.Select(n => Path.Combine(sheets, n)).ToList();
                if (options.Json(parsed))
                {
                    JsonPrinter.Print(new JsonObject { ["folder"] = sheets, ["sheets"] = JsonPrinter.Array(files), ["written"] = changes.Written }, output);
                    return ExitCode.Fine;
                }
                output.WriteLine($"{changes.Files} sheets; {changes.Written} were written:");
                foreach (var file in files) output.WriteLine("  " + file);
                output.WriteLine("An apostrophe before a text keeps a spreadsheet from making a number, a date or a formula of it.");
                return ExitCode.Fine;
            }
            catch (SiteFolderException e)
            {
                throw new CannotRunException(e.Message, e.Hint);
            }
        });
        return command;
    }
}
