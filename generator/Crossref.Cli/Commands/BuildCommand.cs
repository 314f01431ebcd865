using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Site.Pages;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref build</c>: checks the content and builds the site.</summary>
internal static class BuildCommand
{
    internal static Command Create(CommonOptions options)
    {
        var folder = new Option<string>("--out") { Description = "The folder for the site", HelpName = "DIR", DefaultValueFactory = _ => "site" };
        var template = new Option<string?>("--template") { Description = "A folder with your own templates; what it lacks comes from ours", HelpName = "DIR" };
        var command = new Command("build", "Check the records and build the site, which opens by double-click.") { folder, template };
        command.SetAction(parsed => throw new NotSupportedException());
        return command;
    }
}
