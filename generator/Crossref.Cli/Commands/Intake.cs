using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary>Takes in what lies in the inbox, before anything else reads the folder.</summary>
internal static class Intake
{
    /// <summary>Takes in what can be taken in and says why the rest stays.</summary>
    /// <returns>Ids of the records that are in the library now.</returns>
    internal static IReadOnlyList<string> Run(CommonOptions options, ParseResult parsed)
    {
        var (folder, error) = (options.Content(parsed), parsed.InvocationConfiguration.Error);
        Workspace.Require(folder);
        if (!Inbox.HasFiles(folder)) return [];
        try
        {
            using var store = ContentStore.Open(folder, options.Disk);
            var plan = Inbox.Look(folder, options.Today(parsed));
            store.Apply(plan.Changes);
            DiagnosticPrinter.PrintLines(plan.Diagnostics, error);
            return plan.Taken;
        }
        catch (StoreException e)
        {
            error.WriteLine($"The inbox was left as it is. {e.Message}");
            error.WriteLine(e.Hint);
            return [];
        }
    }
}
