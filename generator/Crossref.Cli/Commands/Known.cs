using Crossref.Core.Checking;
using Crossref.Core.Evidence;
using Crossref.Core.Lookup;
using Crossref.Core.Records;

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

    /// <summary>The id of a part that is named by its id or by any number on it.</summary>
    /// <exception cref="CannotRunException">There is none, or there are several.</exception>
    internal static string Part(Library library, string text, string hint = "crossref find WORDS looks parts up.")
    {
        if (library.Parts.ContainsKey(text)) return text;
        var wanted = NumberForm.Of(text);
        var found = library.Parts.Values.Where(p => p.AllNumbers.Any(n => NumberForm.Of(n) == wanted)).Select(p => p.Id).Order(StringComparer.Ordinal).ToList();
        if (found.Count == 1) return found[0];
        if (found.Count > 1) throw new CannotRunException($"{text} is a number of several parts.", "Name one of them: " + string.Join(", ", found));
        Require(text, library.Parts.Keys.Concat(library.Parts.Values.SelectMany(p => p.AllNumbers)), "part", hint);
        return text;
    }

    /// <summary>Passes when a machine's counter is given in a unit in which it was read before, or it never was read.</summary>
    /// <exception cref="CannotRunException">It counts something else, so that nothing would have run any longer.</exception>
    internal static void Counter(Library library, IReadOnlyDictionary<string, string> fields)
    {
        if (fields.GetValueOrDefault("machine") is not { } machine || !library.Machines.ContainsKey(machine)) return;
        var units = LastReading.All(library, machine).Select(r => Words.Of(r.Count.Unit)).Distinct().ToList();
        if (units.Count > 0 && Words.All<CountUnit>().FirstOrDefault(u => fields.ContainsKey(u) && !units.Contains(u)) is { } other)
            throw new CannotRunException($"{machine} counts {string.Join(" and ", units)}, not {other}.", $"Write --{units[0]}. If it has a second counter, note that one first among the readings of {machine}.");
    }

    /// <summary>The address of a position that is named by it or by its last word or words; where the machine is known, within its family.</summary>
    /// <exception cref="CannotRunException">There is none, or there are several.</exception>
    internal static string Position(Library library, string text, string? machine)
    {
        if (library.Positions.ContainsKey(text)) return text;
        var family = machine is null ? null : library.Machines.GetValueOrDefault(machine)?.Family.Id;
        var places = library.Positions.Values.Where(p => family is null || p.Family == family).ToList();
        var found = places.Select(p => p.Address).Where(a => a.EndsWith("/" + text, StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToList();
        if (found.Count == 1) return found[0];
        if (found.Count > 1) throw new CannotRunException($"Several positions are called {text}.", "Name one of them: " + string.Join(", ", found));
        var hint = "crossref find WORDS looks positions up" + (family is null ? "." : $"; {machine} is of the family {family}.");
        Require(text, text.Contains('/', StringComparison.Ordinal) ? library.Positions.Keys : places.Select(p => p.Id), "position", hint);
        return text;
    }
}
