using Crossref.Core.Checking;
using Crossref.Core.Records;

namespace Crossref.Site.Reading;

/// <summary>What a content folder holds, as far as it can be read.</summary>
/// <param name="Library">Every record that could be read; null when no document says whose library it is.</param>
/// <param name="Diagnostics">Everything wrong with the files themselves, sorted.</param>
public sealed record ReadResult(Library? Library, IReadOnlyList<Diagnostic> Diagnostics)
{
    private readonly CheckContext _context = new(default);

    internal ReadResult(Library? library, IReadOnlyList<Diagnostic> diagnostics, CheckContext context)
        : this(library, diagnostics) => _context = context;

    /// <summary>What the checks have to know about this reading.</summary>
    /// <param name="today">The day against which dates are judged.</param>
    public CheckContext ContextFor(DateOnly today) => _context with { Today = today };

    /// <summary>Everything wrong, with the files and across the records, sorted.</summary>
    /// <param name="today">The day against which dates are judged.</param>
    public IReadOnlyList<Diagnostic> Check(DateOnly today) =>
        Library is null ? Diagnostics : DiagnosticOrder.Sort(Diagnostics.Concat(Checks.Run(Library, ContextFor(today))));
}
