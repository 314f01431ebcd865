using System.CommandLine;
using System.Globalization;
using Crossref.Cli.Asking;
using Crossref.Cli.Printing;
using Crossref.Core.Checking;
using Crossref.Core.Storing;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref choose</c>: shows where copies differ, and puts the text that was chosen in force.</summary>
internal static class ChooseCommand
{
    private const string Seen = "crossref choose shows what is open.";

    internal static Command Create(CommonOptions options)
    {
        var words = new Argument<string[]>("RECORD KEY NUMBER") { Description = "What to choose, as the list shows it: the record, the key, the number of the text. KEY may be left out where only one is open", Arity = new ArgumentArity(0, 3) };
        var dryRun = new Option<bool>("--dry-run") { Description = "Say what would be done, and do nothing" };
        var command = new Command("choose", "Where copies differ, show the texts, and put the one that you choose in force.") { words, dryRun };
        command.SetAction(parsed =>
        {
            var (content, named, dry, json) = (options.Content(parsed), parsed.GetValue(words) ?? [], parsed.GetValue(dryRun), options.Json(parsed));
            Workspace.Require(content);
            var asks = named.Length == 0 && options.AtKeyboard && !json;
            using var store = dry || named.Length == 0 && !asks ? null : ContentStore.Open(content, options.Disk);
            if (store is null) ContentStore.FinishInterrupted(content, options.Disk);
            var chooser = Chooser.Read(content, options.Today(parsed));
            var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
            if (chooser.IsRefused)
            {
                DiagnosticPrinter.PrintRefusal([.. chooser.Diagnostics.Where(d => d.Severity == Severity.Error)], json, parsed.InvocationConfiguration);
                error.WriteLine("Nothing was chosen. Mend the errors above first.");
                return ExitCode.Findings;
            }
            var isOpen = chooser.Open.Count > 0;
            var chosen = named.Length > 0 ? [Named(chooser, named)] : asks ? Ask(chooser, new Talk(options.Input, error), dry) : [];
            if (asks && isOpen && chosen.Count == 0)
            {
                error.WriteLine("Nothing was chosen.");
                return ExitCode.Fine;
            }
            var changes = chosen.Count > 0 ? chooser.Changes : [];
            // Each record is sound by itself; together they may not be.
            var after = chosen.Count > 0 ? Aftermath.Of(content, changes, options.Today(parsed)) : [];
            store?.Apply(changes);
            if (json) JsonPrinter.Print(ChoosePrinter.ToJson(chooser.Open, chosen, changes, after, isWritten: store is not null && chosen.Count > 0), output);
            else ChoosePrinter.Print(chooser.Open, chosen, isDryRun: dry, output);
            if (after.Count > 0) DiagnosticPrinter.Print(after, error);
            return after.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
        });
        return command;
    }

    private static Chosen Named(Chooser chooser, string[] words)
    {
        var open = chooser.Open;
        var records = open.Where(c => c.Name == words[0]).ToList();
        if (records.Count == 0) records = [.. open.Where(c => c.Name.EndsWith(":" + words[0], StringComparison.Ordinal))];
        if (records.Count == 0) throw new CannotRunException($"Nothing is to be chosen of {words[0]}.", Seen);
        if (words.Length == 1) throw new CannotRunException("Which text?", "Name its number: crossref choose RECORD KEY NUMBER. " + Seen);
        var asked = words.Length == 3 ? Plain(words[1]) : null;
        var keys = records.SelectMany(r => r.Keys.Select(k => (Record: r, Key: k))).Where(k => asked is null || Plain(CombineGroups.Name(k.Key.Key)) == asked).ToList();
        // The last words of a key will do where they mean but one.
        if (keys.Count == 0) keys = [.. records.SelectMany(r => r.Keys.Select(k => (Record: r, Key: k))).Where(k => Plain(k.Key.Key).EndsWith("/" + asked, StringComparison.Ordinal))];
        if (keys.Count != 1)
        {
            throw new CannotRunException(keys.Count == 0 ? $"Of {words[0]} nothing is to be chosen at {words[1]}." : $"Of {words[0]} more than one thing is to be chosen.",
                "Open are: " + string.Join("; ", (keys.Count == 0 ? records.SelectMany(r => r.Keys) : keys.Select(k => k.Key)).Select(k => CombineGroups.Name(k.Key))) + ".");
        }
        var (record, key) = keys[0];
        if (!int.TryParse(words[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > key.Choices.Count)
            throw new CannotRunException($"{words[^1]} is not the number of a text.", $"There are {key.Choices.Count}: 1 to {key.Choices.Count}. {Seen}");
        return chooser.Choose(record, key, number) is not { } fault ? new Chosen(record, key, number)
            : throw new CannotRunException($"Text {number} cannot be put in force: {fault}.", "Nothing was changed.");
    }

    // The signs between keys may be typed with or without blanks.
    private static string Plain(string key) => string.Join('/', key.Split('/', StringSplitOptions.TrimEntries));

    private static List<Chosen> Ask(Chooser chooser, Talk talk, bool isDryRun)
    {
        var chosen = new List<Chosen>();
        foreach (var (type, name, path) in chooser.Open.SelectMany(c => c.Keys.Select(k => (c.Type, c.Name, k.Key))).ToList())
        {
            // What was chosen before may have settled this too.
            if (chooser.Open.FirstOrDefault(c => c.Type == type && c.Name == name) is not { } record || record.Keys.FirstOrDefault(k => k.Key == path) is not { } key) continue;
            talk.Say("");
            foreach (var line in ChoosePrinter.Lines(record, key)) talk.Say(line);
            var reply = talk.Ask(new Question([], "number", "Which one is right?")
            {
                Offers = [.. key.Choices.Select((c, i) => new Choice(FormattableString.Invariant($"{i + 1}"), ChoosePrinter.First(c)))],
                Default = Question.None,
                Without = "none yet, leave it open",
                Read = text => throw new CannotRunException($"{text} is not the number of a text.", "Type its number, or - to leave it open."),
            });
            if (reply.Kind == ReplyKind.End) return [];
            if (reply.Value is not { } value) continue;
            var number = int.Parse(value, CultureInfo.InvariantCulture);
            if (chooser.Choose(record, key, number) is { } fault) talk.Say($"Text {number} cannot be put in force: {fault}.");
            else chosen.Add(new Chosen(record, key, number));
        }
        return chosen.Count == 0 || isDryRun || talk.Confirm("Write it down?") == ReplyKind.Answer ? chosen : [];
    }
}
