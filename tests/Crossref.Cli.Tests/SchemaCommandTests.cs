using System.Text.Json.Nodes;

namespace Crossref.Cli.Tests;

/// <summary><c>crossref schema</c>, with the manners of <c>build</c>: it writes its own files and touches no others.</summary>
public sealed class SchemaCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("schema").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Schemas_are_written_once_and_need_no_content_folder()
    {
        var run = Tool.Run(_folder, "schema");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        var any = Path.Combine(_folder, "schemas", "record.schema.json");
        Assert.Contains(any, run.Output, StringComparison.Ordinal);
        Assert.NotNull(JsonNode.Parse(File.ReadAllText(any))!["$defs"]!["part"]);
        Assert.Contains(" 0 were written, 0 removed", Tool.Run(_folder, "schema").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_of_any_record_is_printed_alone()
    {
        var run = Tool.Run(_folder, "schema", "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.NotNull(run.Json["$defs"]!["question"]);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void A_folder_with_other_files_is_left_alone()
    {
        File.WriteAllText(Path.Combine(_folder, "taxes.txt"), "mine");
        var run = Tool.Run(_folder, "schema", "--out", ".");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("taxes.txt", run.Error, StringComparison.Ordinal);
        Assert.Equal(["taxes.txt"], Directory.EnumerateFileSystemEntries(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_site_and_schemas_do_not_replace_each_other()
    {
        var (site, schemas) = (Path.Combine(_folder, "site"), Path.Combine(_folder, "schemas"));
        Assert.Equal(0, Tool.OnDemo("build", "--out", site).ExitCode);
        Assert.Equal(2, Tool.Run(_folder, "schema", "--out", site).ExitCode);
        Assert.True(File.Exists(Path.Combine(site, "index.html")));
        Assert.Equal(0, Tool.Run(_folder, "schema", "--out", schemas).ExitCode);
        Assert.Equal(2, Tool.OnDemo("build", "--out", schemas).ExitCode);
        Assert.True(File.Exists(Path.Combine(schemas, "part.schema.json")));
    }
}
