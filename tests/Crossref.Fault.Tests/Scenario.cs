namespace Crossref.Fault.Tests;

/// <summary>
/// A command line whose run is disturbed. <c>{dir}</c> stands for the folder that holds content, site and stick.
/// To have another command disturbed in every way, add a line to <see cref="All"/>.
/// </summary>
/// <param name="Name">What tests call it.</param>
/// <param name="Line">The disturbed command line.</param>
/// <param name="Before">Command lines that ran on the older content; none for a first run.</param>
public sealed record Scenario(string Name, string Line, params string[] Before)
{
    /// <summary>Whether the shop needs a machine for it.</summary>
    public bool HasMachine { get; init; }

    /// <summary>Whether there is nothing left to do once it is done, so that doing it again is refused.</summary>
    public bool IsOnce { get; init; }

    private const string Build = "build --out {dir}/site";
    private const string Pack = "pack {dir}/stick --tools {dir}/tools";

    private const string Combine = "combine {dir}/other";

    public static IReadOnlyList<Scenario> All { get; } =
    [
        new("first build", Build),
        new("later build", Build, Build),
        new("first pack", Pack),
        new("later pack", Pack, Pack),
        new("record", "record --part brg-vm-0907 --replaces brg-os-1203 --verdict fits --basis seated --source red-book --by Orr"),
        new("repair with a bag", "record repair --machine folder --sheets 1000 --removed roller=OS-1203-02,to=bag,grade=runner --fitted roller=VM-0907,from=new --outcome running") { HasMachine = true },
        new("import", "import {dir}/parts.csv --apply"),
        new("first combine", Combine),
        new("later combine", Combine, Combine),
        new("choose", "choose red-book 1", Combine) { IsOnce = true },
    ];

    public static TheoryData<string> Names => [.. All.Select(s => s.Name)];

    public static Scenario Of(string name) => All.Single(s => s.Name == name);

    /// <summary>The arguments of a command line in a folder.</summary>
    public static string[] Arguments(string line, string folder) =>
        [.. line.Replace("{dir}", folder, StringComparison.Ordinal).Split(' '), "--content", Path.Combine(folder, "content"), "--date", "2026-03-01"];
}
