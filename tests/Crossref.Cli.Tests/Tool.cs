using System.Diagnostics;
using System.Text.Json.Nodes;

namespace Crossref.Cli.Tests;

/// <summary>Runs the real executable.</summary>
internal static class Tool
{
    private static readonly string Executable = Path.Combine(AppContext.BaseDirectory, "crossref.dll");

    /// <summary>The demo library of this repository.</summary>
    public static string Demo { get; } = Path.Combine(RepositoryRoot(), "content");

    /// <summary>Runs a command line in a folder and waits for its end. Nobody sits at the keyboard.</summary>
    public static ToolRun Run(string folder, params string[] arguments) => RunTyping(folder, "", arguments);

    /// <summary>Runs a command line in a folder with lines that are typed.</summary>
    public static ToolRun RunTyping(string folder, string typed, params string[] arguments)
    {
        using var process = Start(folder, arguments);
        var error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(typed);
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ToolRun(process.ExitCode, output, error.Result);
    }

    /// <summary>Starts a command line in a folder.</summary>
    public static Process Start(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        start.ArgumentList.Add(Executable);
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }

    /// <summary>Runs a command line on the demo library.</summary>
    public static ToolRun OnDemo(params string[] arguments) =>
        Run(Path.GetTempPath(), [.. arguments, "--content", Demo, "--date", "2026-11-25"]);

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Crossref.sln"))) folder = folder.Parent;
        return folder.FullName;
    }
}

/// <summary>How a run of the executable ended.</summary>
internal sealed record ToolRun(int ExitCode, string Output, string Error)
{
    public JsonNode Json => JsonNode.Parse(Output)!;
}
