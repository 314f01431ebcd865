using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>Pieces of a part that are in the house.</summary>
/// <param name="Holder">What holds them: a bag, an idle unit or a received order.</param>
/// <param name="Id">Its id.</param>
/// <param name="Quantity">How many are left.</param>
/// <param name="Grade">How good they are; null for a part still in a unit.</param>
/// <param name="Bin">Where to find them.</param>
public sealed record InHouse(RecordType Holder, string Id, int Quantity, Grade? Grade, string? Bin);
