using System.Globalization;
using Crossref.Site.Pages;

namespace Crossref.Cli.Printing;

/// <summary>Says now and then how far a long build is.</summary>
internal static class BuildProgress
{
    // A site of this size takes a second or two; smaller ones need no word.
    private const int Step = 1000;

    /// <summary>The same files, with a line for every thousand that were made.</summary>
    internal static IEnumerable<SiteFile> Watch(IEnumerable<SiteFile> files, TextWriter output)
    {
        var made = 0;
        foreach (var file in files)
        {
            yield return file;
            if (++made % Step == 0) output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{made:#,0} files made ..."));
        }
    }
}
