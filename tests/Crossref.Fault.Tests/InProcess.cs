using Crossref.Cli;
using Crossref.Core.Storing;

namespace Crossref.Fault.Tests;

/// <summary>How a run ended and what it said.</summary>
internal sealed record RunResult(int ExitCode, string Output, string Error);

/// <summary>Runs what the executable's entry runs, with a disk of the test's choice.</summary>
internal static class InProcess
{
    public static RunResult Run(string[] arguments, IDisk? disk = null)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        return new RunResult(CommandLine.Run(arguments, output, error, disk), output.ToString(), error.ToString());
    }
}
