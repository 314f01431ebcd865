using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Arithmetic;
using Crossref.Core.Records;

namespace Crossref.Cli.Commands;

/// <summary>
/// <c>crossref bearing</c>, <c>gear</c> and the others: the trade's arithmetic with its working. Options follow from what
/// the calculator asks for. Works without a library too; with one, it looks there for parts and places that match.
/// </summary>
internal static class CalculatorCommand
{
    internal static Command Create(Calculator calculator, CommonOptions options)
    {
        var command = new Command(calculator.Name, calculator.Purpose);
        var read = new Dictionary<string, Func<ParseResult, string?>>(StringComparer.Ordinal);
        foreach (var input in calculator.Inputs)
        {
            if (input.Argument)
            {
                var argument = new Argument<string?>(input.Name.ToUpperInvariant()) { Description = Describe(input), Arity = ArgumentArity.ZeroOrOne };
                command.Arguments.Add(argument);
                read[input.Name] = parsed => parsed.GetValue(argument);
            }
            else
            {
                var option = new Option<string?>("--" + input.Name) { Description = Describe(input), HelpName = input.Measures is null ? "WORD" : "NUMBER" };
                command.Options.Add(option);
                read[input.Name] = parsed => parsed.GetValue(option);
            }
        }
        command.SetAction(parsed =>
        {
            var texts = read.Select(r => (r.Key, Text: r.Value(parsed))).Where(r => r.Text is not null).ToDictionary(r => r.Key, r => r.Text!, StringComparer.Ordinal);
            var library = calculator.LooksAtRecords ? Records(options, parsed) : null;
            var result = calculator.Run(texts, library is null ? OnRecord.Nothing : OnRecord.Of(library));
            if (result.Working is not { } working)
                throw new CannotRunException(
                    string.Join("\n", result.Problems.Select(p => $"{p.Input}: {p.Message}")), $"Try: crossref {calculator.Name} --help");
            if (working.Sought is not null) library ??= Records(options, parsed);
            var output = parsed.InvocationConfiguration.Output;
            var printer = new WorkingPrinter(calculator, working, library);
            if (options.Json(parsed)) JsonPrinter.Print(printer.ToJson(), output);
            else printer.Print(output);
            return ExitCode.Fine;
        });
        return command;
    }

    // The arithmetic needs no records, so that records that are missing or wrong are no reason to stop.
    private static Library? Records(CommonOptions options, ParseResult parsed)
    {
        if (!options.NamesContent(parsed) && !Directory.Exists(options.Content(parsed))) return null;
        var error = parsed.InvocationConfiguration.Error;
        try
        {
            if (Workspace.Open(options, parsed).SoundLibrary is { } library) return library;
            error.WriteLine("crossref: The records were not searched, because some are wrong; crossref check lists what is wrong.");
        }
        catch (CannotRunException e)
        {
            error.WriteLine($"crossref: {e.Message} The records were not searched.");
        }
        return null;
    }

    private static string Describe(CalculatorInput input) => string.Join(
        ", ",
        new[]
        {
            input.Label, input.Choices.Count > 0 ? string.Join(" or ", input.Choices) : "", input.Example.Length > 0 ? "such as " + input.Example : "",
            input.Default.Length > 0 ? input.Default + " when not given" : "",
        }.Where(t => t.Length > 0)) + (input.Help.Length > 0 ? ". " + input.Help : "");
}
