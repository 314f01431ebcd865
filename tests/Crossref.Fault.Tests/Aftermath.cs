using System.Text.Json.Nodes;

namespace Crossref.Fault.Tests;

/// <summary>What must hold after a disturbed run, whatever disturbed it.</summary>
internal sealed class Aftermath : IDisposable
{
    private static readonly string[] Findings = ["missing", "changed", "extra"];

    private readonly Scenario _scenario;
    private readonly Dictionary<string, byte[]> _before;
    private readonly Dictionary<string, byte[]> _clean;

    public Aftermath(Scenario scenario)
    {
        _scenario = scenario;
        Start = Shop.Before(scenario);
        _before = Start.Files();
        using var clean = Start.Copy();
        clean.RunFine(scenario.Line);
        // A folder's own path may stand in no file: the same files must come out elsewhere.
        _clean = clean.Files();
        Assert.NotEmpty(Shop.Differences(_before, _clean));
    }

    /// <summary>The folder before the run; to be copied.</summary>
    public Shop Start { get; }

    /// <summary>Every record is there to the byte, and the stick is whole or says what is wrong. Tells whether anything was left unfinished.</summary>
    public bool AssertNothingLost(Shop shop, string moment, bool finished = false)
    {
        var now = shop.Files();
        foreach (var (path, bytes) in _before.Where(f => f.Key.StartsWith("content/", StringComparison.Ordinal) && !f.Key.StartsWith("content/.crossref/", StringComparison.Ordinal)))
        {
            var fine = now.TryGetValue(path, out var there) ? there.AsSpan().SequenceEqual(bytes) || _clean.TryGetValue(path, out var after) && there.AsSpan().SequenceEqual(after) : !_clean.ContainsKey(path);
            Assert.True(fine, $"{_scenario.Name}, {moment}: {path} is lost or damaged");
        }
        var (asBefore, asClean) = (!Shop.Differences(now, _before).Any(), !Shop.Differences(now, _clean).Any());
        if (_scenario.Line.StartsWith("pack", StringComparison.Ordinal)) AssertStickSaysSo(shop, finished || IsStick(now, _before) || IsStick(now, _clean), moment);
        return !asBefore && !asClean;
    }

    /// <summary>The content has no errors, and the next run succeeds and leaves what a clean run leaves.</summary>
    public void AssertNextRunHeals(Shop shop, string moment)
    {
        var check = InProcess.Run(Scenario.Arguments("check", shop.Folder));
        Assert.True(check.ExitCode == 0, $"{_scenario.Name}, {moment}: {check.Error}{check.Output}");
        if (!_scenario.IsOnce || Shop.Differences(shop.Files(), _clean).Any())
        {
            var run = InProcess.Run(Scenario.Arguments(_scenario.Line, shop.Folder));
            Assert.True(run.ExitCode == 0, $"{_scenario.Name}, {moment}: {run.Error}");
        }
        var differences = Shop.Differences(shop.Files(), _clean);
        Assert.True(!differences.Any(), $"{_scenario.Name}, {moment}: not as after a clean run: {string.Join(", ", differences)}");
    }

    // What was noted in the content folder is no part of the stick.
    private static bool IsStick(Dictionary<string, byte[]> one, Dictionary<string, byte[]> other) => !Shop.Differences(Stick(one), Stick(other)).Any();

    private static Dictionary<string, byte[]> Stick(Dictionary<string, byte[]> files) =>
        files.Where(f => f.Key.StartsWith("stick/", StringComparison.Ordinal)).ToDictionary();

    public void Dispose() => Start.Dispose();

    private void AssertStickSaysSo(Shop shop, bool whole, string moment)
    {
        var stick = Path.Combine(shop.Folder, "stick");
        var verify = InProcess.Run(["verify", stick, "--json"]);
        var expected = !File.Exists(Path.Combine(stick, "MANIFEST.sha256")) ? 2 : whole && !Directory.Exists(Path.Combine(stick, ".crossref-next")) ? 0 : 1;
        Assert.True(verify.ExitCode == expected, $"{_scenario.Name}, {moment}: verify {verify.ExitCode}, not {expected}\n{verify.Output}{verify.Error}");
        if (verify.ExitCode != 1) return;
        var found = JsonNode.Parse(verify.Output)!;
        Assert.True((bool)found["unfinished"]! || Findings.Any(w => found[w]!.AsArray().Count > 0), verify.Output);
    }
}
