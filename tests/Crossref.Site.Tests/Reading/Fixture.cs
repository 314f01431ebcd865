using System.Text;
using Crossref.Core.Checking;
using Crossref.Site.Reading;
using Crossref.Site.Recording;

namespace Crossref.Site.Tests.Reading;

/// <summary>
/// A folder below Diagnostics: <c>input/</c> is laid over the sound library, <c>expected.txt</c> holds every
/// diagnostic, and <c>setup.txt</c> does what no file can (grow FILE, link NAME, missing, as-is).
/// </summary>
internal sealed class Fixture(string name)
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    internal static string Folder { get; } = Path.Combine(Repository.SiteTests, "Diagnostics");

    internal static string Sound { get; } = Path.Combine(Repository.SiteTests, "Sound");

    internal static IEnumerable<string> Names => Directory.EnumerateDirectories(Folder).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal);

    /// <summary>The code the folder is named after.</summary>
    internal string Code => name.Split('-')[0];

    internal string ExpectedFile => Path.Combine(Folder, name, "expected.txt");

    internal string Expected => File.Exists(ExpectedFile) ? File.ReadAllText(ExpectedFile) : "";

    private string[] Setup => Path.Combine(Folder, name, "setup.txt") is var file && File.Exists(file) ? File.ReadAllLines(file) : [];

    internal string Run(Encodings encoding)
    {
        using var folder = new TemporaryFolder();
        var content = Path.Combine(folder.Path, "content");
        using var outside = new TemporaryFolder();
        outside.Write("secret.yaml", "part: secret\nkind: gear\nname: Secret\n");
        if (Setup is ["missing"]) return Diagnostics(content);
        folder.Lay(Sound, Change);
        folder.Lay(Path.Combine(Folder, name, "input"), Change);
        foreach (var line in Setup) Prepare(folder.Path, line, outside.Path);
        return Diagnostics(folder.Path);

        byte[] Change(string path, byte[] bytes) => Setup is ["as-is"] || path.StartsWith("pictures", StringComparison.Ordinal) ? bytes : Encode(bytes, encoding);
    }

    /// <summary>Everything wrong with a folder, as it is printed.</summary>
    internal static string Diagnostics(string folder) =>
        DiagnosticText.Format(DiagnosticOrder.Sort(ContentReader.Read(folder).Check(Today).Concat(Inbox.Look(folder, Today).Diagnostics)));

    internal static byte[] Encode(byte[] bytes, Encodings encoding) => encoding switch
    {
        Encodings.CarriageReturns => [.. bytes.SelectMany(b => b == '\n' ? "\r\n"u8.ToArray() : [b])],
        Encodings.ByteOrderMark => [.. Encoding.UTF8.Preamble, .. bytes],
        _ => bytes,
    };

    private static void Prepare(string folder, string line, string outside)
    {
        var words = line.Split(' ');
        switch (words)
        {
            case ["grow", var file]:
                File.AppendAllText(Path.Combine(folder, file), string.Concat(Enumerable.Repeat("# a line that makes it longer\n", 40_000)));
                break;
            case ["link", var file] when file.EndsWith(".yaml", StringComparison.Ordinal):
                File.CreateSymbolicLink(Path.Combine(folder, file), Path.Combine(outside, "secret.yaml"));
                break;
            case ["link", var file]:
                Directory.CreateSymbolicLink(Path.Combine(folder, file), outside);
                break;
        }
    }
}
