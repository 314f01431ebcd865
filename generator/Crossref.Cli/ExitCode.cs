namespace Crossref.Cli;

/// <summary>What the command's exit code says.</summary>
internal static class ExitCode
{
    /// <summary>All went well; warnings do not count.</summary>
    internal const int Fine = 0;
    /// <summary>The content has errors.</summary>
    internal const int Findings = 1;
    /// <summary>The command could not do its work.</summary>
    internal const int CouldNotRun = 2;
}
