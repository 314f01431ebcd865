using System.Diagnostics;

namespace Crossref.Fault.Tests;

/// <summary>Runs the real executable.</summary>
internal static class Executable
{
    public static Process Start(string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "crossref.dll"));
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }

    public static RunResult End(Process process)
    {
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new RunResult(process.ExitCode, output, error.Result);
    }

    public static RunResult Run(string[] arguments)
    {
        using var process = Start(arguments);
        return End(process);
    }

    /// <summary>Runs another program; null when it is not there.</summary>
    public static RunResult? Other(string name, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true });
            return End(process!);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
