using System.CommandLine;
using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref recheck</c>: a later counter, and how the neighbours look.</summary>
internal static class RecheckCommand
{
    private static readonly string[] Asked = [.. Words.All<CountUnit>(), "by", "neighbours", "note"];

    internal static Command Create(CommonOptions options)
    {
        var recording = new Recording(options);
        var machine = new Argument<string>("MACHINE") { Description = "The machine that you looked at again" };
        var at = new Option<string?>("--at") { Description = "With --neighbours damaged: the position whose part did it", HelpName = "POSITION" };
        var flags = RepairForm.Fields.Where(f => Asked.Contains(f.Name)).ToDictionary(f => f.Name, FieldOption.Of, StringComparer.Ordinal);
        var command = new Command("recheck", "Note a machine's counter some weeks after a repair; what was fitted there has run that much longer.") { machine, at, recording.DryRun };
        foreach (var flag in flags.Values) command.Options.Add(flag);
        command.SetAction(parsed =>
        {
            var fields = FieldOption.Given(flags, parsed);
            fields["machine"] = parsed.GetValue(machine)!;
            if (!fields.Keys.Any(k => k == "neighbours" || Words.All<CountUnit>().Contains(k)))
                throw new CannotRunException("Too little to record: the counter is missing.", "Read it off the machine: --sheets 1216400, or --cycles, or --hours.");
            return recording.Run(parsed, desk =>
            {
                Known.Require(fields["machine"], desk.Library.Machines.Keys, "machine", "crossref find WORDS looks machines up.");
                Known.Counter(desk.Library, fields);
                return desk.Recheck(fields, Damaging(desk.Library, fields, parsed.GetValue(at)));
            });
        });
        return command;
    }

    private static OpenFitting? Damaging(Library library, Dictionary<string, string> fields, string? at)
    {
        if (fields.GetValueOrDefault("neighbours") != "damaged") return null;
        var book = new StatementBook(library);
        var open = OpenFittings.Of(library, fields["machine"]).Where(o => book.Withdrawals.Stands(o.ClaimId)).ToList();
        if (at is not null)
        {
            var address = Known.Position(library, at, fields["machine"]);
            return open.LastOrDefault(o => o.Fitting.Position.Id == address)
                ?? throw new CannotRunException($"No part is known to run at {address} in {fields["machine"]} that is not listed there.", "Record the damage as a finding: crossref record --neighbours damaged.");
        }
        return open.Count < 2 ? open.FirstOrDefault()
            : throw new CannotRunException("Which part damaged its neighbours?", "Name its position: " + string.Join(" or ", open.Select(o => "--at " + o.Fitting.Position.Id)));
    }
}
