using Crossref.Core.Checking;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>One mistake that can be put into a sound library and taken out again.</summary>
/// <param name="Mistake">What kind of mistake it is.</param>
/// <param name="Where">Where it is put.</param>
/// <param name="Make">Puts it in; what it returns takes it out.</param>
/// <param name="Expected">What should be said, asked while the mistake is in and its lines are known.</param>
internal sealed record Plant(string Mistake, string Where, Func<Action> Make, Func<Report> Expected)
{
    public override string ToString() => $"{Mistake} at {Where}";
}

/// <summary>What should be reported: a code at a place.</summary>
internal sealed record Report(string Code, string File, int Line)
{
    internal static Report Of(Diagnostic diagnostic) => new(diagnostic.Code, diagnostic.Place.File, diagnostic.Place.Line);

    public override string ToString() => $"{Code} {File}:{Line}";
}
