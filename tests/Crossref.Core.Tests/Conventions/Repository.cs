using System.Xml.Linq;

namespace Crossref.Core.Tests.Conventions;

/// <summary>The project's own files, as the conventions look at them.</summary>
internal static class Repository
{
    internal static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>A project file below generator/, read as XML.</summary>
    internal static XDocument Project(string name) => XDocument.Load(Path.Combine(Root, "generator", name, name + ".csproj"));

    /// <summary>The names of what a project file includes under an element.</summary>
    internal static IEnumerable<string> Includes(string project, string element) =>
        Project(project).Descendants(element).Select(e => Path.GetFileNameWithoutExtension(e.Attribute("Include")!.Value.Replace('\\', '/')));

    /// <summary>Every C# file below a folder, build output left out.</summary>
    internal static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(p => p is "bin" or "obj"));

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Crossref.sln")) ? folder : Find(Path.GetDirectoryName(folder)!);
}
