namespace Crossref.Core.Records;

/// <summary>One line of a kit.</summary>
public sealed record KitItem(Ref Part, int Quantity);
