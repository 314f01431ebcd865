using Crossref.Core.Checking;

namespace Crossref.Cli.Commands;

/// <summary>Makes sure that what the command line names is on record.</summary>
internal static class Known
{
    /// <summary>Passes when the name is known.</summary>
    /// <exception cref="CannotRunException">It is not; names like it are offered.</exception>
    internal static void Require(string name, IEnumerable<string> known, string what, string hint)
    {
        var names = known.ToList();
        if (names.Contains(name, StringComparer.Ordinal)) return;
        throw new CannotRunException($"There is no {what} {name}.", Suggest.Nearest(name, names) is [var near, ..] ? $"Did you mean {near}?" : hint);
    }
}
