namespace Crossref.Core.Arithmetic;

/// <summary>A machine, or a family of machines, by which somebody may ask.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What to call it.</param>
/// <param name="Family">The id of its family; a family's own id.</param>
public sealed record KnownMachine(string Id, string Name, string Family);
