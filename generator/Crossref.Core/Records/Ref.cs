namespace Crossref.Core.Records;

/// <summary>A reference to another record, by id or position address, and where it is written.</summary>
public readonly record struct Ref(string Id, Place Place)
{
    /// <inheritdoc/>
    public override string ToString() => Id;
}
