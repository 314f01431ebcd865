using Crossref.Cli.Commands;
using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>What a library offers as answers.</summary>
internal sealed class Knowledge(Library library)
{
    internal Library Library => library;

    internal Fits Fits { get; } = new(library);

    /// <summary>Who recorded here, the last one first.</summary>
    internal IReadOnlyList<string> People { get; } =
    [
        .. library.Claims.Values.Where(c => !c.Retired && !Owner.IsElsewhere(c)).Select(c => (c.Date, c.Id, c.By))
            .Concat(library.Repairs.Values.Where(r => !r.Retired && !Owner.IsElsewhere(r)).Select(r => (r.Date, r.Id, r.By)))
            .OrderByDescending(s => s.Date).ThenBy(s => s.Id, StringComparer.Ordinal).Select(s => s.By).OfType<string>().Distinct(StringComparer.Ordinal),
    ];

    internal Question Who(Dictionary<string, string> answers, string text) => new(answers, "by", text)
    {
        Without = "none",
        Offers = [.. People.Select(p => new Choice(p, ""))],
        Default = People.Count > 0 ? People[0] : null,
        // The last name alone is the one person who has it.
        Read = text => People.Contains(text) ? text : People.Where(p => $" {p}".EndsWith($" {text}", StringComparison.OrdinalIgnoreCase)).Take(2).ToList() is [var one] ? one : text,
    };

    /// <summary>The unit in which a machine counts.</summary>
    internal CountUnit UnitOf(string? machine) => machine is null ? CountUnit.Sheets : LastReading.UnitOf(library, machine);

    internal static IEnumerable<T> InUse<T>(IEnumerable<T> records) where T : IRecord =>
        records.Where(r => !r.Retired).OrderBy(r => r.Id, StringComparer.Ordinal);

    internal static IEnumerable<T> Ours<T>(IEnumerable<T> records) where T : IRecord => InUse(records).Where(r => !Owner.IsElsewhere(r));

    /// <summary>The id of a part of which a number was typed.</summary>
    internal string ReadPart(string text) => Known.Part(library, text, "Type another number that is on it, or its id. A part that is not on record needs a record of its own first.");

    /// <summary>The number to ask for.</summary>
    internal string Number(string part) => library.Parts[part].CurrentNumber;

    /// <summary>A count without what people put between its digits.</summary>
    internal static string ReadCount(string text) => text.Where(c => c is not (' ' or ',' or '\'')).ToArray() is { Length: > 0 and < 16 } digits && digits.All(char.IsAsciiDigit)
        ? new string(digits) : throw new CannotRunException($"'{text}' is not a count.", "Write digits only, such as 18000.");

    internal static string Require(string text, IEnumerable<string> known, string what)
    {
        Known.Require(text, known, what, "Type a number from the list.");
        return text;
    }
}
