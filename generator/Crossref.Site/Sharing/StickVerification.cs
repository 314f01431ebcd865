namespace Crossref.Site.Sharing;

/// <summary>What comparing a stick with its manifest found.</summary>
/// <param name="Files">How many files the manifest names.</param>
/// <param name="Missing">Files that it names and that are not there.</param>
/// <param name="Changed">Files whose content is another, or cannot be read.</param>
/// <param name="Extra">Files that it does not name.</param>
/// <param name="Unfinished">Whether packing was interrupted.</param>
public sealed record StickVerification(int Files, IReadOnlyList<string> Missing, IReadOnlyList<string> Changed, IReadOnlyList<string> Extra, bool Unfinished)
{
    /// <summary>Whether the stick is as it was packed.</summary>
    public bool IsWhole => Missing.Count + Changed.Count + Extra.Count == 0 && !Unfinished;
}
