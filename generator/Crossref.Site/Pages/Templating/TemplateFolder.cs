using System.Text;

namespace Crossref.Site.Pages.Templating;

/// <summary>
/// The files a site is made with: those shipped inside this program, and in front of them a shop's own folder, file by
/// file. Only plain names are looked up, so that a template cannot reach outside.
/// </summary>
internal sealed class TemplateFolder(string? own)
{
    private const string Prefix = "template/";
    private static readonly SortedDictionary<string, string> Shipped = new(
        typeof(TemplateFolder).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .ToDictionary(n => n[Prefix.Length..].Replace('\\', '/'), n => n, StringComparer.Ordinal),
        StringComparer.Ordinal);

    /// <summary>The names of every file that is no template and goes into the site as it is.</summary>
    internal static IEnumerable<string> Assets => Shipped.Keys.Where(n => !IsTemplate(n));

    internal static bool Has(string name) => Shipped.ContainsKey(name);

    /// <summary>The bytes of a shipped file, or of the shop's own in its place.</summary>
    internal byte[] Read(string name)
    {
        if (OwnPath(name) is { } path) return File.ReadAllBytes(path);
        using var stream = typeof(TemplateFolder).Assembly.GetManifestResourceStream(Shipped[name])!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    internal string ReadText(string name)
    {
        var text = Encoding.UTF8.GetString(Read(name)).Replace("\r\n", "\n", StringComparison.Ordinal);
        return text.StartsWith('\uFEFF') ? text[1..] : text;
    }

    /// <summary>What an error calls the file.</summary>
    internal string NameOf(string name) => OwnPath(name) ?? "site-template/" + name;

    private string? OwnPath(string name)
    {
        if (own is null || !Has(name)) return null;
        var path = Path.Combine(own, name);
        return File.Exists(path) ? path : null;
    }

    private static bool IsTemplate(string name) => name.EndsWith(".html", StringComparison.Ordinal);
}
