using System.CommandLine;
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
        var command = new Command("repair", "Record a whole repair: what was found, removed, fitted, swapped. to=bag puts an old piece into a new bag.") { recording.DryRun };
        foreach (var flag in flags.Values) command.Options.Add(flag);
        foreach (var line in lines.Values) command.Options.Add(line);
        command.SetAction(parsed =>
        {
            var fields = FieldOption.Given(flags, parsed);
            if (!fields.ContainsKey("machine") && !fields.ContainsKey("unit"))
                throw new CannotRunException("Too little to record: --machine or --unit missing.", "Name the machine that was repaired, or the unit on the bench.");
            var typed = lines.SelectMany(l => (parsed.GetValue(l.Value) ?? []).Select(text => (l.Key, Line: Read(l.Key, text)))).ToList();
            if (typed.Count(l => l.Key == "swapped") > 1) throw new CannotRunException("One repair changes one unit.", "Record the other swap as a repair of its own.");
            return recording.Run(parsed, desk => desk.Repair(fields, typed.ToLookup(l => l.Key, l => Resolved(desk.Library, fields, l.Key, l.Line))));
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

    private static RepairLine Resolved(Library library, Dictionary<string, string> fields, string kind, RepairLine line)
    {
        if (kind is "removed" or "fitted" && line.Value is { } part) line = line with { Value = Known.Part(library, part) };
        var isEnding = kind != "swapped" && !fields.ContainsKey("assembly") && fields.ContainsKey("machine") && !line.Position.Contains('/', StringComparison.Ordinal);
        return isEnding ? line with { Position = Known.Position(library, line.Position, fields["machine"]).Split('/', 2)[1] } : line;
    }
}
