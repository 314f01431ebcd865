namespace Crossref.Core.Records;

/// <summary>Where something stands in the content folder. Line and column count from 1; 0 means the file as a whole.</summary>
/// <param name="File">Path below the content folder, with forward slashes.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in characters, from 1.</param>
public readonly record struct Place(string File, int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => Line == 0 ? File : FormattableString.Invariant($"{File}:{Line}:{Column}");
}
