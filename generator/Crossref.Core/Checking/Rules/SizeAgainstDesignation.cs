using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Checking.Rules;

/// <summary>A size that its part's designation contradicts.</summary>
internal sealed class SizeAgainstDesignation : IRule
{
    /// <inheritdoc/>
    public DiagnosticCode Code { get; } = new("CR0902", Severity.Warning, "Size contradicts the designation",
        "One of the two is wrong, and parts may be compared by the wrong one: what is written under size goes first.");

    /// <inheritdoc/>
    public IEnumerable<Diagnostic> Check(CheckScope scope) =>
        from part in scope.Whole<Part>()
        from said in SizeBook.FromDesignation(part)
        where part.Sizes.ContainsKey(said.Key)
        let written = part.Sizes[said.Key]
        let comparison = SizeBook.Compare(part.Kind, said.Key, new KnownSize(written, SizeOrigin.Written), new KnownSize(said.Value, SizeOrigin.Designation))
        where comparison.Agreement == Agreement.Differs
        select Code.At(
            scope.PlaceOf(part, "size"), $"{said.Key} {written.Text}, but {part.Standard} has {said.Value.Text}{(written.Quantity is null ? "" : $" ({comparison.How})")}",
            "measure again, and correct the size or the designation");
}
