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
        from found in SizeBook.Contradictions(part)
        let written = found.One!.Value.Size
        select Code.At(
            scope.PlaceOf(part, "size"), $"{found.Attribute} {written.Text}, but {part.Standard} has {found.Other!.Value.Size.Text}{(written.Quantity is null ? "" : $" ({found.How})")}",
            "measure again, and correct the size or the designation" + BareReading.Hint(found));
}
