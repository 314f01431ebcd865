using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>One step of a path of evidence.</summary>
/// <param name="Kind">How it goes on.</param>
/// <param name="From">The position for a first step, else the part before.</param>
/// <param name="To">The part reached.</param>
/// <param name="Standing">How strong this step is by itself.</param>
/// <param name="Claims">Ids of the statements behind it, the leading one first; empty for a supersession.</param>
/// <param name="Source">The source or repair behind the leading statement.</param>
/// <param name="Locator">Where in that source.</param>
/// <param name="Via">The other position, for <see cref="StepKind.SamePosition"/>.</param>
public sealed record PathStep(
    StepKind Kind, string From, string To, Basis Standing, IReadOnlyList<string> Claims, string? Source, string? Locator, string? Via = null);
