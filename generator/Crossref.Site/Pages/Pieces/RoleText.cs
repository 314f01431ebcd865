namespace Crossref.Site.Pages.Pieces;

/// <summary>A role as people say it.</summary>
internal static class RoleText
{
    /// <summary>"fold/roller-bearing" is "Roller bearing (fold)".</summary>
    internal static string Of(string role)
    {
        var slash = role.LastIndexOf('/');
        var job = role[(slash + 1)..].Replace('-', ' ');
        var text = job.Length == 0 ? role : char.ToUpperInvariant(job[0]) + job[1..];
        return slash <= 0 ? text : $"{text} ({role[..slash].Replace('-', ' ')})";
    }
}
