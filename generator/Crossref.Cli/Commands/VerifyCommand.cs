using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;
using Crossref.Site.Sharing;
using Crossref.Site.Writing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref verify</c>: whether a stick is as it was packed.</summary>
internal static class VerifyCommand
{
    internal static Command Create(CommonOptions options)
    {
        var folder = new Argument<string>("DIR") { Description = "The stick, such as E:\\ or /media/stick" };
        var command = new Command("verify", "Compare every file of a stick with its list of check sums, and name those that are missing, changed or extra.\nThis finds accidents, not somebody who owns the stick and changes the list too.") { folder };
        command.SetAction(parsed =>
        {
            var found = Verify(parsed.GetValue(folder)!);
            var output = parsed.InvocationConfiguration.Output;
            if (options.Json(parsed)) JsonPrinter.Print(ToJson(found), output);
            else Print(found, output);
            return found.IsWhole ? ExitCode.Fine : ExitCode.Findings;
        });
        return command;
    }

    private static StickVerification Verify(string folder)
    {
        try
        {
            return StickVerifier.Verify(folder);
        }
        catch (SiteFolderException e)
        {
            throw new CannotRunException(e.Message, e.Hint);
        }
    }

    private static void Print(StickVerification found, TextWriter output)
    {
        foreach (var (word, files) in new[] { ("missing", found.Missing), ("changed", found.Changed), ("extra", found.Extra) })
            foreach (var file in files) output.WriteLine($"{word}  {file}");
        if (found.Unfinished) output.WriteLine("Packing this stick was interrupted. Pack it again; that finishes it.");
        output.WriteLine(found.IsWhole
            ? $"All {found.Files} files are as they were packed."
            : $"{found.Missing.Count} missing, {found.Changed.Count} changed, {found.Extra.Count} extra, of {found.Files} files.");
        output.WriteLine("This finds accidents. It does not find somebody who owns the stick and changed its list too.");
    }

    private static JsonObject ToJson(StickVerification found) => new()
    {
        ["whole"] = found.IsWhole,
        ["files"] = found.Files,
        ["missing"] = Names(found.Missing),
        ["changed"] = Names(found.Changed),
        ["extra"] = Names(found.Extra),
        ["unfinished"] = found.Unfinished,
    };

    private static JsonArray Names(IEnumerable<string> files) => new([.. files.Select(f => (JsonNode)f)]);
}
