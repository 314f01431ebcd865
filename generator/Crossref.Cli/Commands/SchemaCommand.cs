using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Site.Schemas;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref schema</c>: JSON Schemas of the records, for editors.</summary>
internal static class SchemaCommand
{
    // Another list than a site's, so that neither takes the other's files for its own stale ones.
    private const string ListName = "crossref-schemas.sha256";

    internal static Command Create(CommonOptions options)
    {
        var folder = new Option<string>("--out") { Description = "The folder for the schemas", HelpName = "DIR", DefaultValueFactory = _ => "schemas" };
        var command = new Command("schema", "Write a JSON Schema for each kind of record, so that an editor completes keys and marks mistakes.") { folder };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            if (options.Json(parsed))
            {
                JsonPrinter.Print(RecordSchemas.Any(), output);
                return ExitCode.Fine;
            }
            try
            {
                var changes = new SiteWriter(parsed.GetValue(folder)!, options.Disk, ListName).Write(RecordSchemas.Files());
                output.WriteLine($"{changes.Files} schemas; {changes.Written} were written, {changes.Removed} removed.");
                output.WriteLine("Point your editor, for the YAML files of your content folder, at:");
                output.WriteLine("  " + Path.GetFullPath(Path.Combine(parsed.GetValue(folder)!, "record.schema.json")));
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
