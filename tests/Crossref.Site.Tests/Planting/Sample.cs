using Crossref.Core.Checking;

namespace Crossref.Site.Tests.Planting;

/// <summary>Something that may be written as a value.</summary>
/// <param name="Raw">As it is written in YAML.</param>
/// <param name="Mistake">What is wrong with it, in a word or two; empty when nothing is.</param>
/// <param name="Code">What is reported; null when nothing is.</param>
internal sealed record Sample(string Raw, string Mistake, DiagnosticCode? Code)
{
    internal static Sample Good(string raw) => new(raw, "", null);
}
