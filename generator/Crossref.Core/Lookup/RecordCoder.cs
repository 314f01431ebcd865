namespace Crossref.Core.Lookup;

/// <summary>
/// The records behind result lines: one line each, of seven fields parted by tabs and then any number of marked
/// ones: <c>f</c> a family, a digit a number of that role, <c>m</c> the maker of the number before it.
/// </summary>
internal static class RecordCoder
{
    private const int LongestText = 300;
    private const int FixedFields = 7;

    /// <summary>The line of an entry.</summary>
    public static string Encode(LookupEntry entry)
    {
        var fields = new List<string>
        {
            Clean(entry.Type),
            Clean(entry.Id),
            Shorten(Clean(entry.Title)),
            Clean(entry.Page),
            Shorten(Clean(entry.Detail)),
            Clean(entry.Kind ?? ""),
            Clean(entry.Standing ?? ""),
        };
        fields.AddRange(entry.Families.Select(family => "f" + Clean(family)));
        foreach (var number in entry.Numbers)
        {
            fields.Add(Radix.Alphabet[(int)number.Role] + Clean(number.Text));
            if (!string.IsNullOrWhiteSpace(number.Maker))
            {
                fields.Add("m" + Clean(number.Maker));
            }
        }

        return string.Join('\t', fields);
    }

    /// <summary>The entry of a line, without what is never shown: aliases and text.</summary>
    public static LookupEntry Decode(string line)
    {
        var fields = line.Split('\t');
        var families = new List<string>();
        var numbers = new List<LookupNumber>();
        foreach (var field in fields.Skip(FixedFields))
        {
            var text = field[1..];
            switch (field[0])
            {
                case 'f':
                    families.Add(text);
                    break;
                case 'm':
                    numbers[^1] = numbers[^1] with { Maker = text };
                    break;
                default:
                    numbers.Add(new LookupNumber(text, (NumberRole)Radix.Digit(field[0])));
                    break;
            }
        }

        return new LookupEntry
        {
            Type = fields[0],
            Id = fields[1],
            Title = fields[2],
            Page = fields[3],
            Detail = fields[4],
            Kind = fields[5].Length == 0 ? null : fields[5],
            Standing = fields[6].Length == 0 ? null : fields[6],
            Families = families,
            Numbers = numbers,
        };
    }

    /// <summary>The text on one line: every run of white space and control characters becomes one space.</summary>
    public static string Clean(string text) => string.Join(
        ' ',
        new string([.. text.Select(c => char.IsControl(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static string Shorten(string text)
    {
        if (text.Length <= LongestText)
        {
            return text;
        }

        var cut = char.IsHighSurrogate(text[LongestText - 2]) ? LongestText - 2 : LongestText - 1;
        return text[..cut] + "…";
    }
}
