namespace Crossref.Core.Lookup;

/// <summary>Says why an entry was found.</summary>
internal static class Reason
{
    /// <summary>The reason for a match, as one sentence without a full stop.</summary>
    /// <param name="match">The match.</param>
    /// <param name="record">The entry as the index shows it.</param>
    public static string For(Match match, LookupEntry record)
    {
        var clauses = match.Numbers.Select(number => For(number, record)).ToList();
        if (match.Words.Count > 0)
        {
            clauses.Add((match.Words.Count == 1 ? "word: " : "words: ") + string.Join(", ", match.Words));
        }

        return string.Join("; ", clauses);
    }

    /// <summary>The reason when only filters were set.</summary>
    public static string For(IEnumerable<(string Name, string Value)> filters) =>
        string.Join("; ", filters.Select(filter => $"{filter.Name}: {filter.Value}"));

    private static string For(NumberMatch match, LookupEntry record)
    {
        var number = Number(match, record);
        var text = number?.Text ?? record.Id;
        return match.Tier switch
        {
            LookupTier.Typo => $"{Difference(match)} {text}{Aside(match.Role, number)}",
            LookupTier.Middle => $"{text}{Aside(match.Role, number, ",")} contains {match.Typed}",
            LookupTier.Prefix => $"{text}{Aside(match.Role, number, ",")} starts with {match.Typed}",
            _ => $"{text} is {Name(match.Role, number, record.Title)}",
        };
    }

    // The number that was met; null stands for the id of the entry, which is not among its numbers.
    private static LookupNumber? Number(NumberMatch match, LookupEntry record)
    {
        return record.Numbers.FirstOrDefault(number => number.Role == match.Role && IsMet(NumberForm.Of(number.Text)));

        bool IsMet(string form) => match.Tier == LookupTier.Middle
            ? form.Length > match.Key.Length && form.EndsWith(match.Key, StringComparison.Ordinal)
            : form == match.Key;
    }

    private static string Difference(NumberMatch match) => Slips.Between(match.Form, match.Key) switch
    {
        Slip.Missing => "one character less than",
        Slip.Extra => "one character more than",
        Slip.Swapped => "two characters swapped in",
        _ => "one character differs from",
    };

    private static string Aside(NumberRole role, LookupNumber? number, string end = "") =>
        role == NumberRole.Number ? "" : $", {Name(role, number, "")}{end}";

    private static string Name(NumberRole role, LookupNumber? number, string title) => role switch
    {
        NumberRole.Number => "its number",
        NumberRole.Also => $"{(number?.Maker is { } maker ? maker : "another maker")}'s number for it",
        NumberRole.Earlier => title.Length == 0 ? "an earlier number" : $"an earlier number of {title}",
        NumberRole.Generic => "its generic designation",
        _ => "its id",
    };
}
