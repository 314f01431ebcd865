using System.CommandLine;
using System.CommandLine.Parsing;
using Crossref.Cli.Commands;
using Crossref.Cli.Printing;
using Crossref.Core.Arithmetic;
using Crossref.Core.Checking;
using Crossref.Core.Storing;

namespace Crossref.Cli;

/// <summary>The crossref command: reads the arguments, runs one command, gives its exit code.</summary>
public static class CommandLine
{
    /// <summary>Runs a command line. JSON goes to <paramref name="output"/> alone; what went wrong goes to <paramref name="error"/>.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="output">Answers.</param>
    /// <param name="error">What went wrong, and questions.</param>
    /// <param name="disk">The disk that content folders are changed on; null for the real one.</param>
    /// <param name="input">Where answers to questions come from.</param>
    /// <param name="atKeyboard">Whether somebody sits there who can answer.</param>
    /// <returns>0 fine, 1 errors in the content, 2 could not run.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, IDisk? disk = null, TextReader? input = null, bool atKeyboard = false)
    {
        (output, error) = (new ScreenWriter(output), new ScreenWriter(error));
        var options = new CommonOptions { Disk = disk ?? new Disk(), Input = input ?? TextReader.Null, AtKeyboard = atKeyboard };
        var root = new RootCommand(
            "Crossref keeps what your shop knows about parts: which one fits where, how surely, and who says so.\n" +
            "It reads the records in a folder called content and answers questions about them, or builds a site\n" +
            "that opens on any PC without internet.")
        {
            BuildCommand.Create(options),
            CheckCommand.Create(options),
            FitsCommand.Create(options),
            WhereCommand.Create(options),
            FindCommand.Create(options),
            RecordCommand.Create(options),
            RecheckCommand.Create(options),
            CombineCommand.Create(options),
            ChooseCommand.Create(options),
            ImportCommand.Create(options),
            ExportCommand.Create(options),
            SchemaCommand.Create(options),
            PackCommand.Create(options),
            VerifyCommand.Create(options),
        };
        foreach (var calculator in Calculators.All) root.Subcommands.Add(CalculatorCommand.Create(calculator, options));
        options.AddTo(root);
        var parsed = root.Parse(args);
        try
        {
            if (parsed.Errors.Count == 0) return parsed.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
            if (args.Length == 0) return Math.Max(ExitCode.CouldNotRun, root.Parse("--help").Invoke(new InvocationConfiguration { Output = error, Error = error }));
            var command = parsed.CommandResult.Command;
            if (command == root && parsed.UnmatchedTokens is [var first, ..] && !first.StartsWith('-'))
                Known.Require(first, root.Subcommands.Select(c => c.Name), "command", "crossref --help lists them.");
            foreach (var problem in parsed.Errors) error.WriteLine("crossref: " + problem.Message);
            foreach (var near in parsed.UnmatchedTokens.SelectMany(t => Suggest.Nearest(t, command.Options.Concat(root.Options).Select(o => o.Name)).Take(1))) error.WriteLine($"Did you mean {near}?");
            error.WriteLine($"Try: crossref {Words(parsed.CommandResult)}--help");
            return ExitCode.CouldNotRun;
        }
        catch (StoreException e)
        {
            error.WriteLine("crossref: " + e.Message);
            error.WriteLine(e.Hint);
            return ExitCode.CouldNotRun;
        }
        catch (CannotRunException e)
        {
            error.WriteLine("crossref: " + e.Message);
            error.WriteLine(e.Hint);
            return ExitCode.CouldNotRun;
        }
        // A stick may be pulled, or a file taken away, at any moment in which nobody has a better word for it.
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine("crossref: A file could not be read or written: " + e.Message);
            error.WriteLine("Check that the disk or stick is in and that you may read it, and run the command again.");
            return ExitCode.CouldNotRun;
        }
    }

    private static string Words(CommandResult command) => command.Parent is CommandResult above ? $"{Words(above)}{command.Command.Name} " : "";
}
