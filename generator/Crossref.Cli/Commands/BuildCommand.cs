using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Pages.Templating;
using Crossref.Site.Sharing.Publishing;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref build</c>: takes in the inbox, checks the content and builds the site.</summary>
internal static class BuildCommand
{
    internal static Command Create(CommonOptions options)
    {
        var folder = new Option<string>("--out") { Description = "The folder for the site", HelpName = "DIR", DefaultValueFactory = _ => "site" };
        var template = new Option<string?>("--template") { Description = "A folder with your own templates; what it lacks comes from ours", HelpName = "DIR" };
        var command = new Command("build", "Take in the inbox, check the records and build the site, which opens by double-click.") { folder, template };
        command.SetAction(parsed =>
        {
            var (site, templates) = (parsed.GetValue(folder)!, parsed.GetValue(template));
            if (templates is not null && !Directory.Exists(templates))
                throw new CannotRunException($"There is no template folder {Path.GetFullPath(templates)}.", "Name a folder that exists, or leave --template out.");
            var taken = Intake.Run(options, parsed);
            var workspace = Workspace.Open(options, parsed, inbox: true);
            if (workspace.LibraryOrErrors(parsed) is not { } library)
            {
                parsed.InvocationConfiguration.Error.WriteLine("Nothing was built. Mend the errors above and build again.");
                return ExitCode.Findings;
            }
            var pages = SitePages.Render(library, options.ForSite(parsed, templates, Publications.Read(options.Content(parsed), options.Disk)?.Last));
            var changes = Write(options.Disk, site, BuildProgress.Watch(pages, parsed.InvocationConfiguration.Error));
            Report(options.Json(parsed), workspace, taken, Path.GetFullPath(Path.Combine(site, "index.html")), changes, parsed.InvocationConfiguration.Output);
            return ExitCode.Fine;
        });
        return command;
    }

    private static SiteChanges Write(IDisk disk, string site, IEnumerable<SiteFile> pages)
    {
        try
        {
            return new SiteWriter(site, disk).Write(pages);
        }
        catch (SiteFolderException e)
        {
            throw new CannotRunException(e.Message, e.Hint);
        }
        catch (TemplateProblemException e)
        {
            throw new CannotRunException(e.Message, "Mend the template, or take it out of the folder to use ours. The old site is untouched.");
        }
    }

    private static void Report(bool json, Workspace workspace, IReadOnlyList<string> taken, string index, SiteChanges changes, TextWriter output)
    {
        if (json)
        {
            JsonPrinter.Print(new JsonObject
            {
                ["index"] = index,
                ["files"] = changes.Files,
                ["written"] = changes.Written,
                ["removed"] = changes.Removed,
                ["warnings"] = workspace.Diagnostics.Count,
                ["takenIn"] = JsonPrinter.Array(taken),
            }, output);
            return;
        }
        if (taken.Count > 0) output.WriteLine($"Taken in from the inbox: {string.Join(", ", taken)}");
        if (workspace.Diagnostics.Count > 0) output.WriteLine($"{DiagnosticPrinter.Number(workspace.Diagnostics.Count, "warning")}; crossref check says more.");
        output.WriteLine($"The site has {changes.Files} files; {changes.Written} were written, {changes.Removed} removed.");
        output.WriteLine("Open it by double-click:");
        output.WriteLine("  " + index);
    }
}
