using System.CommandLine;
using Crossref.Cli.Asking;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref record repair</c>: a whole repair, and the bags it fills.</summary>
internal static class RecordRepairCommand
{
    internal static Command Create(CommonOptions options)
    {
        var recording = new Recording(options);
        var flags = RepairForm.Fields.ToDictionary(f => f.Name, FieldOption.Of, StringComparer.Ordinal);
        var lines = RepairForm.Lines.ToDictionary(l => l.Name, l => new Option<string[]>("--" + l.Name)
        {
            Description = $"One each: {l.Says}, and behind commas {string.Join(", ", l.Words.Select(w => w + "="))}",
            HelpName = l.Says,
            AllowMultipleArgumentsPerToken = false,
        }, StringComparer.Ordinal);
        var ask = new Option<bool>("--ask") { Description = "Ask for what is missing, also when nobody sits at the keyboard" };
        var command = new Command("repair", "Record a whole repair: what was found, removed, fitted, swapped. Without flags it asks. to=bag puts an old piece into a new bag.") { recording.DryRun, ask };
        foreach (var flag in flags.Values) command.Options.Add(flag);
        foreach (var line in lines.Values) command.Options.Add(line);
        command.SetAction(parsed =>
        {
            var fields = FieldOption.Given(flags, parsed);
            var typed = lines.SelectMany(l => (parsed.GetValue(l.Value) ?? []).Select(text => (Kind: l.Key, Line: Read(l.Key, text)))).ToList();
            if (typed.Count(l => l.Kind == "swapped") > 1) throw new CannotRunException("One repair changes one unit.", "Record the other swap as a repair of its own.");
            var names = fields.ContainsKey("machine") || fields.ContainsKey("unit");
            var today = options.Today(parsed);
            if (parsed.GetValue(ask) || (options.AtKeyboard && (!names || typed.Count == 0))) return Ask(recording, parsed, today, fields, typed);
            if (!names) throw new CannotRunException("Too little to record: --machine or --unit missing.", "Name the machine that was repaired, or the unit on the bench. At a keyboard crossref record repair asks for everything.");
            if (typed.Count == 0 && fields.Keys.All(k => k is "machine" or "unit" or "assembly" or "by"))
                throw new CannotRunException("Too little to record: nothing says what was found or done.", "Write --found, --removed, --fitted, --swapped, a counter or --note. At a keyboard crossref record repair asks for everything.");
            return recording.Run(parsed, desk => desk.Repair(fields, Resolved(desk.Library, today, fields, typed).ToLookup(l => l.Kind, l => l.Line)));
        });
        return command;
    }

    private static RepairLine Read(string kind, string text)
    {
        var (line, words) = (RepairLine.Read(text), RepairForm.Lines.First(l => l.Name == kind).Words);
        foreach (var word in line.More.Keys) Known.Require(word, words, $"word in --{kind}:", "Its words are " + string.Join(", ", words));
        if (kind == "swapped" && line.Value is not null) throw new CannotRunException($"--swapped {text}: only the assembly comes first.", "Write --swapped fold-head,out=head-a,in=head-b.");
        if (line["to"] != "bag" && RepairForm.BagWords.FirstOrDefault(line.More.ContainsKey) is { } stray)
            throw new CannotRunException($"{stray}= speaks of a new bag, but the piece goes into none.", "Add to=bag, or leave it out.");
        return line;
    }

    private static int Ask(Recording recording, ParseResult parsed, DateOnly today, Dictionary<string, string> fields, List<(string Kind, RepairLine Line)> typed)
    {
        // What is wrong in the flags is said before anything is asked.
        if ((fields.ContainsKey("machine") || fields.ContainsKey("unit")) && recording.Try(parsed, desk => desk.Repair(fields, Resolved(desk.Library, today, fields, typed).ToLookup(l => l.Kind, l => l.Line)), ends: true) is null)
            return ExitCode.Findings;
        return recording.Ask(parsed, known =>
        {
            var lines = Resolved(known.Library, today, fields, typed);
            return () => new RepairQuestions(known, today, fields, lines);
        });
    }

    private static List<(string Kind, RepairLine Line)> Resolved(Library library, DateOnly today, Dictionary<string, string> fields, List<(string Kind, RepairLine Line)> lines)
    {
        Known.Counter(library, fields);
        // A bag's record says how many were put in; nothing adds to it afterwards.
        if (lines.Select(l => l.Line["to"]).FirstOrDefault(to => to is not null && library.Bags.GetValueOrDefault(to)?.Date.Latest < today) is { } bag)
            throw new CannotRunException($"{bag} was filled on {library.Bags[bag].Date}, and a piece more would not be counted in it.", "Write to=bag,grade=runner for a bag of its own; two bags may lie in one bin.");
        return [.. lines.Select(l => (l.Kind, Resolved(library, fields, l.Kind, l.Line)))];
    }

    private static RepairLine Resolved(Library library, Dictionary<string, string> fields, string kind, RepairLine line)
    {
        if (kind is "removed" or "fitted" && line.Value is { } part) line = line with { Value = Known.Part(library, part) };
        var isEnding = kind != "swapped" && !fields.ContainsKey("assembly") && fields.ContainsKey("machine") && !line.Position.Contains('/', StringComparison.Ordinal);
        return isEnding ? line with { Position = Known.Position(library, line.Position, fields["machine"]).Split('/', 2)[1] } : line;
    }
}
