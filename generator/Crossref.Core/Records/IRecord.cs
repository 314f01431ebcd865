namespace Crossref.Core.Records;

/// <summary>What every record of the library has.</summary>
public interface IRecord
{
    /// <summary>What kind of document this is.</summary>
    RecordType Type { get; }

    /// <summary>The id, unique in the library whatever the type.</summary>
    string Id { get; }

    /// <summary>Where the document begins.</summary>
    Place Place { get; }

    /// <summary>Withdrawn from answers but kept, so that nothing is ever lost.</summary>
    bool Retired { get; }
}
