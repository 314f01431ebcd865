using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;

namespace Crossref.Site.Reading;

/// <summary>Collects what is wrong, so that reading goes on and everything is reported at once.</summary>
internal sealed class DiagnosticLog
{
    private readonly List<Diagnostic> _found = [];

    internal IReadOnlyList<Diagnostic> Found => _found;

    internal void Add(DiagnosticCode code, Place place, string message, string hint) =>
        _found.Add(code.At(place, message, hint));

    /// <summary>Reports the first hidden character of a text; false when it holds none.</summary>
    internal bool AddHidden(string text, Place place, string hint)
    {
        var at = HiddenCharacters.IndexIn(text);
        if (at < 0) return false;
        var code = HiddenCharacters.IsControlAt(text, at) ? FileCodes.ControlCharacter : FileCodes.HiddenCharacter;
        Add(code, place, HiddenCharacters.Name(text, at), hint);
        return true;
    }
}
