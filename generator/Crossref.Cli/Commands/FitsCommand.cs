using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref fits</c>: what fits a position, how surely, and who says so.</summary>
internal static class FitsCommand
{
    internal static Command Create(CommonOptions options)
    {
        var position = new Argument<string?>("POSITION") { Description = "Where the part goes: family/assembly/position, or its last word where only one is called so", Arity = ArgumentArity.ZeroOrOne };
        var machine = new Option<string?>("--machine") { Description = "The machine you ask for; its model, serial and mains then decide", HelpName = "ID" };
        var all = new Option<bool>("--all") { Description = "Every position, without a machine and for each machine of its family" };
        var command = new Command("fits", "Say which parts fit a position, how surely, and who says so.") { position, machine, all };
        command.SetAction(parsed =>
        {
            var (address, id) = (parsed.GetValue(position), parsed.GetValue(machine));
            if (address is null != parsed.GetValue(all) || (parsed.GetValue(all) && id is not null))
                throw new CannotRunException("Name one position, or ask for all of them.", "Write crossref fits family/assembly/position, or crossref fits --all.");
            if (Workspace.Open(options, parsed).LibraryOrErrors(parsed) is not { } library) return ExitCode.Findings;
            var fits = new Fits(library);
            var output = parsed.InvocationConfiguration.Output;
            var answers = address is null ? All(library, fits).ToList() : [One(library, fits, address, id)];
            if (options.Json(parsed))
            {
                JsonPrinter.Print(address is null ? JsonPrinter.Array(answers, FitsPrinter.ToJson) : FitsPrinter.ToJson(answers[0]), output);
                return ExitCode.Fine;
            }
            var printer = new FitsPrinter(library);
            foreach (var answer in answers)
            {
                printer.Print(answer, output);
                if (address is null) output.WriteLine();
            }
            return ExitCode.Fine;
        });
        return command;
    }

    private static IEnumerable<FitsAnswer> All(Library library, Fits fits) =>
        from position in library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal)
        from machine in library.MachinesOf(position.Family).Select(m => m.Id).Prepend(null)
        select fits.At(position.Address, machine);

    private static FitsAnswer One(Library library, Fits fits, string address, string? machine)
    {
        if (machine is not null) Known.Require(machine, library.Machines.Keys, "machine", "crossref find WORDS looks machines up.");
        address = Known.Position(library, address, machine);
        if (machine is null) return fits.At(address);
        var (family, place) = (library.Machines[machine].Family.Id, library.Positions[address]);
        if (family != place.Family)
            throw new CannotRunException($"{machine} is of the family {family}; the position is of {place.Family}.", "Name a machine of the position's own family, or leave --machine out.");
        return fits.At(address, machine);
    }
}
