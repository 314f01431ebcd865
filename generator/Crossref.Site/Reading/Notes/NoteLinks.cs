using Crossref.Core.Checking;

namespace Crossref.Site.Reading.Notes;

/// <summary>Links of notes: a word that says what is linked to, a colon, and its id or address.</summary>
internal static class NoteLinks
{
    /// <summary>Every scheme, by what it leads to.</summary>
    internal static IReadOnlyDictionary<string, Target> Schemes { get; } =
        Enum.GetValues<Target>().Where(t => t is not (Target.None or Target.Anything))
            .ToDictionary(t => t.ToString().ToLowerInvariant(), StringComparer.Ordinal);
}
