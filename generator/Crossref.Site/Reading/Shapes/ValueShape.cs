using Crossref.Core.Checking;
using Crossref.Core.Quantities;

namespace Crossref.Site.Reading.Shapes;

/// <summary>What a value may be. One row of the format; reading, schemas and documentation all go by it.</summary>
/// <param name="Kind">What it is read as.</param>
internal sealed record ValueShape(ValueKind Kind)
{
    /// <summary>What a reference may point at.</summary>
    internal Target Target { get; init; }
    /// <summary>The vocabulary of a word; for a reference, words that are taken instead of an id.</summary>
    internal IReadOnlyList<string> Words { get; init; } = [];
    /// <summary>Words that pages show but that nobody may write, since they are worked out.</summary>
    internal IReadOnlyList<string> Reached { get; init; } = [];
    /// <summary>What a quantity measures.</summary>
    internal Dimension Dimension { get; init; }
    /// <summary>Smallest number or quantity allowed.</summary>
    internal decimal Least { get; init; }
    /// <summary>Largest number allowed.</summary>
    internal decimal Most { get; init; } = Values.Largest;
    /// <summary>The shape of a list's entries.</summary>
    internal ValueShape? Item { get; init; }
    /// <summary>The keys of a map.</summary>
    internal MapShape? Map { get; init; }
    /// <summary>The one key of the map that a single value stands for; null when only a map will do.</summary>
    internal string? Short { get; init; }

    /// <summary>"a whole number" and the like, for messages and documentation.</summary>
    internal string Expects => Kind switch
    {
        ValueKind.Text => "text",
        ValueKind.Id => "an id",
        ValueKind.Reference when Words.Count > 0 => $"{Targets.Written(Target)}, or {string.Join(" or ", Words)}",
        ValueKind.Reference => Targets.Written(Target),
        ValueKind.LocalAssembly => "the id of an assembly within its family",
        ValueKind.LocalPosition => "a position, or assembly/position",
        ValueKind.Word => $"one of {string.Join(", ", Words)}",
        ValueKind.OpenWord => $"a word such as {string.Join(", ", Words)}",
        ValueKind.Quantity => "a quantity",
        ValueKind.Number => "a number",
        ValueKind.Whole => "a whole number",
        ValueKind.Life => "a number of sheets, cycles or hours",
        ValueKind.Wait => "a time in min or h",
        ValueKind.TrueFalse => "true or false",
        ValueKind.Date => "a date",
        ValueKind.List => "a list",
        _ => "a map of keys",
    };
}
