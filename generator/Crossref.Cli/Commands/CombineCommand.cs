using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref combine</c>: brings another copy's records in.</summary>
internal static class CombineCommand
{
    internal static Command Create(CommonOptions options)
    {
        var other = new Argument<string>("DIR") { Description = "The other copy: a stick, or a content folder" };
        var dryRun = new Option<bool>("--dry-run") { Description = "Say what would be done, and do nothing" };
        var command = new Command("combine", "Bring the records of another copy in, and say what was decided for each.") { other, dryRun };
        command.SetAction(parsed =>
        {
            var (content, theirs) = (options.Content(parsed), parsed.GetValue(other)!);
            foreach (var folder in new[] { content, theirs })
            {
                if (!Directory.Exists(folder)) throw new CannotRunException($"There is no folder {Path.GetFullPath(folder)}.", "Name the stick or the content folder of the other copy.");
            }
            if (IsSame(content, theirs) || IsSame(content, Path.Combine(theirs, "content")))
                throw new CannotRunException($"{Path.GetFullPath(theirs)} is this copy itself.", "Name the folder of the other copy.");
            try
            {
                var (dry, to) = (parsed.GetValue(dryRun), parsed.InvocationConfiguration);
                using var store = dry ? null : ContentStore.Open(content, options.Disk);
                if (dry) ContentStore.FinishInterrupted(content, options.Disk);
                var plan = Combiner.Plan(content, theirs, options.Today(parsed));
                // Each record is sound by itself; two shops may still have given one number to two parts.
                var after = plan.IsRefused ? [] : Aftermath.Of(content, plan.Changes, options.Today(parsed));
                if (!plan.IsRefused) store?.Apply(plan.Changes);
                if (options.Json(parsed)) JsonPrinter.Print(CombinePrinter.ToJson(plan, after, dry), to.Output);
                else CombinePrinter.Print(plan, dry, to.Output);
                if (after.Count > 0)
                {
                    DiagnosticPrinter.Print(after, to.Error);
                    to.Error.WriteLine(dry ? "With the other copy's records in, this would have to be mended." : "The other copy's records are in. Mend the errors above; nothing can be built before.");
                }
                return plan.IsRefused || after.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException && e is not StoreException)
            {
                throw new CannotRunException($"A file could not be read: {e.Message}", "Check that the stick is still in. Nothing was changed.");
            }
        });
        return command;
    }

    private static bool IsSame(string folder, string other) =>
        string.Equals(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar), Path.GetFullPath(other).TrimEnd(Path.DirectorySeparatorChar), StringComparison.OrdinalIgnoreCase);
}
