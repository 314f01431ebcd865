using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>Something wrong in the content folder: what, where, and what to do about it.</summary>
/// <param name="Code">Stable code, such as <c>CR0101</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Place">Where.</param>
/// <param name="Message">What is wrong, in a sentence.</param>
/// <param name="Hint">What to do, in a sentence.</param>
public sealed record Diagnostic(string Code, Severity Severity, Place Place, string Message, string Hint);
