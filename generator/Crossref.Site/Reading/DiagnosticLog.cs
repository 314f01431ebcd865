using Crossref.Core.Checking;
using Crossref.Core.Records;

namespace Crossref.Site.Reading;

/// <summary>Collects what is wrong, so that reading goes on and everything is reported at once.</summary>
internal sealed class DiagnosticLog
{
    private readonly List<Diagnostic> _found = [];

    internal IReadOnlyList<Diagnostic> Found => _found;

    internal void Add(DiagnosticCode code, Place place, string message, string hint) =>
        _found.Add(code.At(place, message, hint));
}
