namespace Crossref.Core.Tests.Conventions;

/// <summary>Data flows downwards: Cli → Site → Core, and packages stay where they are wanted.</summary>
public class DependencyTests
{
    private static readonly string[] OnlyInSite = ["CsvHelper", "Markdig", "Scriban", "YamlDotNet"];

    [Fact]
    public void Core_references_no_package_and_no_project()
    {
        Assert.Empty(Repository.Includes("Crossref.Core", "PackageReference"));
        Assert.Empty(Repository.Includes("Crossref.Core", "ProjectReference"));
        Assert.All(typeof(Core.Records.Library).Assembly.GetReferencedAssemblies(), a => Assert.StartsWith("System", a.Name, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Crossref.Site", "Crossref.Core")]
    [InlineData("Crossref.Cli", "Crossref.Site")]
    public void Each_project_references_the_one_below_it_alone(string project, string below) =>
        Assert.Equal([below], Repository.Includes(project, "ProjectReference"));

    [Fact]
    public void Yaml_Markdown_sheets_and_templates_are_referenced_by_Site_alone()
    {
        foreach (var project in Directory.EnumerateFiles(Repository.Root, "*.csproj", SearchOption.AllDirectories).Select(p => Path.GetFileNameWithoutExtension(p)))
        {
            if (project is "Crossref.Site" || !Directory.Exists(Path.Combine(Repository.Root, "generator", project))) continue;
            Assert.DoesNotContain(Repository.Includes(project, "PackageReference"), p => OnlyInSite.Any(o => p.StartsWith(o, StringComparison.Ordinal)));
        }
        foreach (var file in Repository.Sources("generator/Crossref.Core").Concat(Repository.Sources("generator/Crossref.Cli")))
            Assert.DoesNotContain(File.ReadLines(file), l => OnlyInSite.Any(o => l.StartsWith("using " + o, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("YamlDotNet", "/Reading/Yaml/")]
    [InlineData("CsvHelper", "/Sheets/")]
    public void Inside_Site_each_package_stays_in_the_stage_that_wants_it(string package, string folder)
    {
        var users = Repository.Sources("generator/Crossref.Site").Where(f => File.ReadLines(f).Any(l => l.StartsWith("using " + package, StringComparison.Ordinal))).ToList();
        Assert.NotEmpty(users);
        Assert.All(users, f => Assert.Contains(folder, f.Replace('\\', '/'), StringComparison.Ordinal));
    }
}
