namespace Crossref.Cli.Tests;

/// <summary>A copy of the demo library in which commands may record.</summary>
internal sealed class Shop : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("shop").FullName;

    internal Shop()
    {
        foreach (var file in Directory.EnumerateFiles(Tool.Demo, "*", SearchOption.AllDirectories)) Write(Path.GetRelativePath(Tool.Demo, file), File.ReadAllBytes(file));
    }

    internal string Content => Path.Combine(_folder, "content");

    internal ToolRun Run(params string[] arguments) => Tool.Run(_folder, arguments.Contains("--date") ? arguments : [.. arguments, "--date", "2026-11-25"]);

    internal ToolRun RunTyping(string typed, params string[] arguments) => Tool.RunTyping(_folder, typed, [.. arguments, "--date", "2026-11-25"]);

    /// <summary>Runs a command line for somebody at the keyboard, who types these lines.</summary>
    internal ToolRun AtKeyboard(IEnumerable<string> typed, params string[] arguments)
    {
        using var screen = new StringWriter();
        using var input = new StringReader(string.Concat(typed.Select(line => line + "\n")));
        return AtKeyboard(input, screen, arguments);
    }

    /// <summary>Runs a command line for somebody at the keyboard, who sees what is asked.</summary>
    internal ToolRun AtKeyboard(TextReader input, StringWriter screen, string[] arguments)
    {
        using var output = new StringWriter();
        var exitCode = CommandLine.Run([.. arguments, "--content", Content, "--date", "2026-11-25"], output, screen, input: input, atKeyboard: true);
        return new ToolRun(exitCode, output.ToString(), screen.ToString());
    }

    internal void Write(string path, byte[] bytes)
    {
        var full = Path.Combine(Content, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
    }

    internal void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));

    internal string Read(string path) => File.ReadAllText(Path.Combine(Content, path));

    internal bool Has(string path) => File.Exists(Path.Combine(Content, path));

    /// <summary>Every file but what the tool keeps for itself, with its text.</summary>
    internal IReadOnlyDictionary<string, string> Files => Directory.EnumerateFiles(Content, "*", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(Content, f).Replace('\\', '/')).Where(f => !f.StartsWith(".crossref", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal).ToDictionary(f => f, Read);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
