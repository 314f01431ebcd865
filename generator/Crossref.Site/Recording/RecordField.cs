namespace Crossref.Site.Recording;

/// <summary>One thing that a form asks for.</summary>
/// <param name="Name">Its name in forms and on the command line.</param>
/// <param name="Says">What it says.</param>
/// <param name="Words">The words it may hold; empty for any text.</param>
public sealed record RecordField(string Name, string Says, IReadOnlyList<string> Words)
{
    /// <summary>Whether it is ticked or not, and holds no text.</summary>
    public bool IsTick => Words is ["true"];
}
