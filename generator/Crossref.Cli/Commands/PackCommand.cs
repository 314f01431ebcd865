using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Pages.Templating;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Publishing;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref pack</c>: lays out a stick.</summary>
internal static class PackCommand
{
    internal static Command Create(CommonOptions options)
    {
        var folder = new Argument<string>("DIR") { Description = "The stick, such as E:\\ or /media/stick; an empty folder, or one that was packed before" };
        var tools = new Option<string?>("--tools") { Description = "The folder with the published tools; without it, beside this tool", HelpName = "DIR" };
        var template = new Option<string?>("--template") { Description = "A folder with your own templates; what it lacks comes from ours", HelpName = "DIR" };
        var replace = new Option<bool>("--replace") { Description = "Replace records on the stick that came from elsewhere: you took them in already, with crossref combine" };
        var command = new Command("pack", "Lay out a stick: the site, your records, the tool for Windows, Linux and macOS, and a page to start from.") { folder, tools, template, replace };
        command.SetAction(parsed =>
        {
            var (stick, templates, published) = (parsed.GetValue(folder)!, parsed.GetValue(template), parsed.GetValue(tools));
            foreach (var named in new[] { templates, published }.OfType<string>().Where(n => !Directory.Exists(n)))
                throw new CannotRunException($"There is no folder {Path.GetFullPath(named)}.", "Name a folder that exists, or leave the option out.");
            var workspace = Workspace.Open(options, parsed);
            if (workspace.LibraryOrErrors(parsed) is not { } library)
            {
                parsed.InvocationConfiguration.Error.WriteLine("Nothing was packed. Mend the errors above and pack again.");
                return ExitCode.Findings;
            }
            Remember(options, parsed, History.Note(options.Content(parsed), options.Today(parsed)), "what its records say now");
            var publications = Publications.Read(options.Content(parsed), options.Disk);
            var pages = SitePages.Render(library, options.ForSite(parsed, templates, publications?.ComparedOn(options.Today(parsed))));
            var plan = new StickPlan(options.Content(parsed), library.Card, options.Today(parsed)) { Tools = published ?? PublishedTools.BesideThis(), Replaces = parsed.GetValue(replace) };
            var report = Pack(new StickPacker(stick, options.Disk), plan, BuildProgress.Watch(pages, parsed.InvocationConfiguration.Error));
            Remember(options, parsed, [Publications.After(publications, PublishedState.Of(library, options.Today(parsed))).ToFile()], "that it was packed");
            Report(options.Json(parsed), Path.GetFullPath(stick), report, parsed.InvocationConfiguration.Output);
            return ExitCode.Fine;
        });
        return command;
    }

    // A copy that is to come back needs to know what both began with, and what changes from here on is new to whoever has
    // the stick. A folder that cannot be written is packed all the same.
    private static void Remember(CommonOptions options, ParseResult parsed, IReadOnlyList<FileChange> changes, string what)
    {
        if (changes.Count == 0) return;
        try
        {
            using var store = ContentStore.Open(options.Content(parsed), options.Disk);
            store.Apply(changes);
        }
        catch (StoreException e)
        {
            parsed.InvocationConfiguration.Error.WriteLine($"crossref: It could not be noted in this library {what}: {e.Message}");
        }
    }

    private static StickReport Pack(StickPacker packer, StickPlan plan, IEnumerable<SiteFile> pages)
    {
        try
        {
            return packer.Pack(plan, pages);
        }
        catch (SiteFolderException e)
        {
            throw new CannotRunException(e.Message, e.Hint);
        }
        catch (TemplateProblemException e)
        {
            throw new CannotRunException(e.Message, "Mend the template, or take it out of the folder to use ours. The stick is untouched.");
        }
    }

    private static void Report(bool json, string stick, StickReport report, TextWriter output)
    {
        if (json)
        {
            JsonPrinter.Print(new JsonObject
            {
                ["stick"] = stick,
                ["files"] = report.Changes.Files,
                ["written"] = report.Changes.Written,
                ["removed"] = report.Changes.Removed,
                ["tools"] = new JsonArray([.. report.Tools.Select(t => (JsonNode)t)]),
            }, output);
            return;
        }
        output.WriteLine($"The stick has {report.Changes.Files} files; {report.Changes.Written} were written, {report.Changes.Removed} removed.");
        output.WriteLine(report.Tools.Count > 0
            ? "The tool is on it for " + string.Join(", ", report.Tools) + "."
            : "No tool is on it: none was found beside this one. Name the folder of the published ones with --tools DIR.");
        output.WriteLine("Eject the stick before you pull it. On the other PC open:");
        output.WriteLine("  " + Path.Combine(stick, StickLayout.Start));
    }
}
