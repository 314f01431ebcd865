using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Sharing.Texts;

/// <summary>Names of files that every disk takes as they are, and that lead nowhere else.</summary>
internal static class SafePath
{
    private const int Longest = 150;

    /// <summary>What is wrong with a path below a content folder; null when nothing is.</summary>
    internal static string? Fault(string path)
    {
        if (path.Length > Longest) return $"has more than {Longest} characters";
        foreach (var name in path.Split('/'))
        {
            if (name is "" or "." or "..") return "leads out of its folder";
            if (name.IndexOfAny(['<', '>', ':', '"', '|', '?', '*', '\\']) >= 0 || name.Any(char.IsControl)) return "has a character that Windows does not take";
            if (name[^1] is '.' or ' ') return "ends in a dot or a blank, which Windows drops";
            if (ScalarChecker.DeviceNames.Contains(name.Split('.')[0].TrimEnd(), StringComparer.OrdinalIgnoreCase)) return "is the name of a device on Windows";
        }
        return null;
    }

    /// <summary>What two names have in common when Windows or a stick takes them for the same.</summary>
    internal static string Folded(string path) => path.Normalize().ToUpperInvariant();
}
