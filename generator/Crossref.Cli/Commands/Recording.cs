using System.CommandLine;
using Crossref.Cli.Asking;
using Crossref.Cli.Printing;
using Crossref.Core.Storing;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary>What every command that records does: form the records, try them, show what changes, write them.</summary>
internal sealed class Recording(CommonOptions options)
{
    internal Option<bool> DryRun { get; } = new("--dry-run") { Description = "Show what would be written, and write nothing" };

    /// <summary>Records what is formed. While it runs no other program changes the folder.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="form">Forms the records.</param>
    /// <param name="isSeen">Whether somebody has just seen what changes.</param>
    internal int Run(ParseResult parsed, Func<RecordingDesk, IReadOnlyList<NewRecord>> form, bool isSeen = false)
    {
        var dry = parsed.GetValue(DryRun);
        Workspace.Require(options.Content(parsed));
        using var store = dry ? null : ContentStore.Open(options.Content(parsed), options.Disk);
        return Try(parsed, form, ends: true) is { } proposal ? Write(parsed, proposal, store, isSeen) : ExitCode.Findings;
    }

    /// <summary>Asks, shows what the answers would change, and records it when that is confirmed.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="begin">Out of what the library offers, what begins the questions anew.</param>
    internal int Ask(ParseResult parsed, Func<Knowledge, Func<IQuestions>> begin)
    {
        if (Workspace.Open(options, parsed).LibraryOrErrors(parsed) is not { } library) return ExitCode.Findings;
        var talk = new Talk(options.Input, parsed.InvocationConfiguration.Error);
        var interview = new Interview(talk, begin(new Knowledge(library)));
        talk.Say("Enter takes what stands in brackets. Where nothing does, it goes back, as the word back always does; from the first question\nit goes out. Nothing is written until the end.");
        while (interview.Run() is { } answered)
        {
            if (Try(parsed, answered.Form, ends: false) is { } tried)
            {
                talk.Say("");
                RecordPrinter.PrintPreview(tried, parsed.InvocationConfiguration.Error);
                var reply = talk.Confirm("Write it down?");
                if (reply == ReplyKind.Answer) return Run(parsed, answered.Form, isSeen: true);
                if (reply == ReplyKind.End) break;
            }
            else
            {
                // What was answered is not lost over one wrong word.
                talk.Say("The last question comes again; the word back goes on to the ones before it.");
            }
            if (!interview.Back()) break;
        }
        talk.Say("Nothing was recorded.");
        return ExitCode.CouldNotRun;
    }

    /// <summary>The records in the library as it would be with them, and how the parts stand; null after what is wrong was printed.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="form">Forms the records.</param>
    /// <param name="ends">Whether the command ends when they are refused; else it asks again.</param>
    internal Recorded? Try(ParseResult parsed, Func<RecordingDesk, IReadOnlyList<NewRecord>> form, bool ends)
    {
        var json = ends && options.Json(parsed);
        var error = parsed.InvocationConfiguration.Error;
        var workspace = Workspace.Open(options, parsed);
        if (workspace.SoundLibrary is not { } library)
        {
            DiagnosticPrinter.PrintRefusal(workspace.Errors, json, parsed.InvocationConfiguration);
            error.WriteLine("Nothing was recorded. Mend the errors above first.");
            return null;
        }
        var desk = new RecordingDesk(options.Content(parsed), workspace.Read, options.Today(parsed));
        var proposal = desk.Try(form(desk));
        if (!proposal.IsRefused)
        {
            var ids = proposal.Records.Select(r => r.Id).ToList();
            return new Recorded(proposal, Standings.Of(library, proposal.After, ids), Standings.Of(proposal.After, proposal.After, ids));
        }
        foreach (var record in proposal.Records) RecordPrinter.PrintText(record, error);
        DiagnosticPrinter.PrintRefusal(proposal.Caused, json, parsed.InvocationConfiguration);
        error.WriteLine("Nothing was recorded.");
        return null;
    }

    private int Write(ParseResult parsed, Recorded recorded, ContentStore? store, bool isSeen)
    {
        store?.Apply(recorded.Proposal.Changes);
        var output = parsed.InvocationConfiguration.Output;
        if (options.Json(parsed)) JsonPrinter.Print(RecordPrinter.ToJson(recorded, written: store is not null), output);
        else
        {
            if (store is null) RecordPrinter.PrintPreview(recorded, output);
            else if (!isSeen) RecordPrinter.PrintChanges(recorded, output);
            RecordPrinter.PrintFiles(recorded, written: store is not null, output);
        }
        return ExitCode.Fine;
    }
}
