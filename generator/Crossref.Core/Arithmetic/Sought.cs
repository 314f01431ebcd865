using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic;

/// <summary>What a calculation says about a part that somebody holds, so that parts like it can be looked for.</summary>
/// <param name="Kind">The kind of part.</param>
/// <param name="Sizes">The sizes that are known of it, by the attribute's name under <c>size</c>.</param>
public sealed record Sought(PartKind Kind, IReadOnlyDictionary<string, Size> Sizes);
