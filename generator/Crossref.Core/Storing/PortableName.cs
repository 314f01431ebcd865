namespace Crossref.Core.Storing;

/// <summary>Which names of files and folders every system and every stick can hold.</summary>
public static class PortableName
{
    /// <summary>The longest path below a content folder, so that a drive letter and a folder or two fit before it on Windows.</summary>
    public const int LongestPath = 200;

    private static readonly HashSet<string> Devices = new(
        ["con", "prn", "aux", "nul", "conin$", "conout$", .. "123456789¹²³".SelectMany(n => new[] { "com" + n, "lpt" + n })], StringComparer.OrdinalIgnoreCase);

    /// <summary>Why a path with forward slashes cannot be kept everywhere; null when it can.</summary>
    public static string? Trouble(string path)
    {
        if (path.Length > LongestPath) return FormattableString.Invariant($"the path is longer than {LongestPath} characters");
        return path.Split('/').Select(OfName).FirstOrDefault(t => t is not null);
    }

    private static string? OfName(string name)
    {
        if (name.Length == 0 || name is "." or "..") return "the path does not lead straight down";
        if (name.FirstOrDefault(c => char.IsControl(c) || "<>:\"\\|?*\uFFFD".Contains(c)) is var odd and not '\0')
            return char.IsControl(odd) || odd == '\uFFFD' ? "a name holds a character that is none" : $"Windows does not allow the character {odd} in a name";
        if (name.Contains('\0')) return "a name holds a character that is none";
        for (var i = 0; i < name.Length; i++)
            if (char.IsSurrogate(name[i]) && (i + 1 == name.Length || !char.IsSurrogatePair(name[i], name[++i]))) return "a name holds a character that is none";
        if (name[^1] is '.' or ' ') return "Windows does not keep a dot or a space at the end of a name";
        if (name[0] == ' ') return "a name begins with a space";
        return Devices.Contains(name.Split('.')[0].TrimEnd(' ')) ? $"{name} is the name of a device on Windows" : null;
    }
}
