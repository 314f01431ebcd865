namespace Crossref.Core.Checking;

/// <summary>One rule: one code, and how to find it.</summary>
internal interface IRule
{
    /// <summary>What it reports.</summary>
    DiagnosticCode Code { get; }

    /// <summary>Every case of it. Pure: neither the library nor the scope is changed.</summary>
    IEnumerable<Diagnostic> Check(CheckScope scope);
}
