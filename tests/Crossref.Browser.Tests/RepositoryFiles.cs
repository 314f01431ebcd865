namespace Crossref.Browser.Tests;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
public static class RepositoryFiles
{
    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = FindRoot();

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Crossref.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("The tests must run from inside the repository.");
    }
}
