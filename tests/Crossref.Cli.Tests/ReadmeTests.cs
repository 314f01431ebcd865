using System.Text.RegularExpressions;

namespace Crossref.Cli.Tests;

/// <summary>What the README promises in its first five minutes, done as written.</summary>
public sealed partial class ReadmeTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("readme").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_first_machine_works_as_written()
    {
        var readme = File.ReadAllText(Path.Combine(Path.GetDirectoryName(Tool.Demo)!, "README.md"));
        var files = NamedFile().Matches(readme);
        Assert.Equal(3, files.Count);
        foreach (Match file in files)
        {
            var path = Path.Combine(_folder, file.Groups["path"].Value);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, file.Groups["text"].Value);
        }
        foreach (var command in Command().Matches(readme).Select(m => m.Groups["words"].Value.Split(' ')))
        {
            var run = Tool.Run(_folder, command);
            Assert.True(run.ExitCode == 0, run.Error + run.Output);
            if (command[0] == "check") Assert.Contains("Nothing to mend", run.Output, StringComparison.Ordinal);
            if (command[0] == "bearing") Assert.EndsWith(Output().Match(readme).Groups["text"].Value, run.Output, StringComparison.Ordinal);
            if (command[0] == "fits") Assert.Matches("OS-1203-02.*documented[\\s\\S]*VM-0907.*ran", run.Output);
        }
        Assert.True(File.Exists(Path.Combine(_folder, "site", "index.html")));
    }

    [GeneratedRegex(@"^`(?<path>content/[a-z]+\.yaml)`.*?^```yaml\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex NamedFile();

    [GeneratedRegex(@"^```text\n(?<text>.+?)^```", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Output();

    [GeneratedRegex(@"^crossref (?<words>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Command();
}
