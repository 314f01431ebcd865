using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>What the checks know besides the records.</summary>
/// <param name="Today">The day against which dates are judged; an input, so that the same content gives the same answer.</param>
public sealed record CheckContext(DateOnly Today)
{
    /// <summary>
    /// Ids of records of which only a part could be read. They can be referred to, but no rule draws a conclusion
    /// from what they seem to lack: that mistake has been reported already.
    /// </summary>
    public IReadOnlySet<string> Incomplete { get; init; } = new HashSet<string>();

    /// <summary>Ids that are written somewhere in text that could not be read: whether they or what is in them exists is unknown.</summary>
    public IReadOnlySet<string> Lost { get; init; } = new HashSet<string>();

    /// <summary>Types of documents whose id could not be read: what a reference to such a type means may be one of them.</summary>
    public Target Nameless { get; init; }

    /// <summary>Where the keys of records are written, by id and key; a missing entry means the record's own place.</summary>
    public IReadOnlyDictionary<(string Id, string Key), Place> Keys { get; init; } = new Dictionary<(string, string), Place>();
}
