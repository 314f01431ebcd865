using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Sheets;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref import</c>: a sheet of parts or bags, shown first and taken in only when nothing is wrong.</summary>
internal static class ImportCommand
{
    internal static Command Create(CommonOptions options)
    {
        var file = new Argument<string>("FILE") { Description = "A sheet saved as CSV, its first row naming the columns" };
        var kind = new Option<string?>("--as") { Description = "What its rows are; without it the columns tell", HelpName = string.Join('|', SheetImport.Kinds) };
        kind.AcceptOnlyFromAmong([.. SheetImport.Kinds]);
        var map = new Option<string[]>("--map")
        {
            Description = $"Reads a column as a field, such as --map \"Art. Nr.=number\"; ={SheetImport.NotUsed} leaves it out",
            HelpName = "COLUMN=FIELD",
            AllowMultipleArgumentsPerToken = false,
        };
        var apply = new Option<bool>("--apply") { Description = "Write what is new; without it nothing is written" };
        var command = new Command("import", "Show what a sheet of parts or bags would add and what is wrong with it; --apply takes it in.") { file, kind, map, apply };
        command.SetAction(parsed =>
        {
            var named = Named(parsed.GetValue(map) ?? [], parsed.GetValue(kind));
            Workspace.Require(options.Content(parsed));
            // From reading to writing no other program changes the folder.
            using var store = parsed.GetValue(apply) ? ContentStore.Open(options.Content(parsed), options.Disk) : null;
            var workspace = Workspace.Open(options, parsed);
            if (workspace.LibraryOrErrors(parsed) is not { } library)
            {
                parsed.InvocationConfiguration.Error.WriteLine("Nothing was imported. Mend the errors above first.");
                return ExitCode.Findings;
            }
            var import = Open(parsed.GetValue(file)!, s => new SheetImport(s, Path.GetFileName(parsed.GetValue(file)!), library, options.Today(parsed)));
            foreach (var heading in named.Keys.Where(_ => import.Headings.Count > 0)) Known.Require(heading, import.Headings, "column", $"The columns are {string.Join(", ", import.Headings)}.");
            var plan = import.Plan(options.Content(parsed), workspace.Read, parsed.GetValue(kind), named);
            if (plan.Changes.Count > 0) store?.Apply(plan.Changes);
            ImportPrinter.Print(plan, Path.GetFileName(parsed.GetValue(file)!), store is not null, options.Json(parsed), parsed.InvocationConfiguration.Output);
            return plan.HasErrors ? ExitCode.Findings : ExitCode.Fine;
        });
        return command;
    }

    private static Dictionary<string, string> Named(string[] maps, string? kind)
    {
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var text in maps)
        {
            // A heading may hold an equals sign, a field does not.
            var at = text.LastIndexOf('=');
            if (at < 1) throw new CannotRunException($"--map \"{text}\" does not name a column and a field.", "Write it such as --map \"Art. Nr.=number\".");
            var (heading, field) = (text[..at].Trim(), text[(at + 1)..].Trim());
            if (!SheetImport.IsField(kind, field)) Known.Require(field, SheetImport.FieldsOf(kind), "field", $"The fields are {string.Join(", ", SheetImport.FieldsOf(kind))}.");
            named[heading] = field;
        }
        return named;
    }

    private static SheetImport Open(string file, Func<Stream, SheetImport> read)
    {
        try
        {
            if (Directory.Exists(file)) throw new CannotRunException($"{file} is a folder.", "Name the sheet in it.");
            using var stream = File.OpenRead(file);
            return read(stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{file} could not be read: {e.Message}", "Check the name, and close it in the spreadsheet.");
        }
    }
}
