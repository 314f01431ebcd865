namespace Crossref.Core.Checking.Codes;

/// <summary>Every code there is: those of reading, those of the rules, those of the inbox.</summary>
public static class DiagnosticCodes
{
    /// <summary>In the order of the codes.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } =
        [.. FileCodes.All, .. YamlCodes.All, .. ShapeCodes.All, .. NoteCodes.All, .. Checks.Rules.Select(r => r.Code), .. InboxCodes.All, .. SharingCodes.All];
}
