using System.Text.RegularExpressions;

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>Takes a bearing's number apart. The script of the bearing calculator does the same.</summary>
internal static partial class BearingReader
{
    internal const string NotOne = "that is no bearing number that can be read; write it like 6001-2RS, 61901, F688ZZ or MR105";

    internal static bool TryRead(string text, out BearingDesignation? designation, out string problem)
    {
        designation = null;
        var written = Tidy(text);
        var head = Head().Match(written);
        problem =
            Sizes().IsMatch(written) ? "those are sizes; give them as bore, outside and width"
            : Inch().IsMatch(written) ? "inch bearings are not in the table; give bore, outside and width as measured"
            : head.Success && written.Length <= 60 ? "" : NotOne;
        if (problem.Length > 0) return false;
        var kind = head.Groups["kind"].Value;
        var number = (kind.StartsWith('M') ? "MR" : "") + head.Groups["number"].Value.Replace(" ", "", StringComparison.Ordinal);
        var rest = head.Groups["rest"].Value;
        if (!Known(number) && number.EndsWith('2') && Known(number[..^1]) && rest.Length > 0 && rest[0] is 'R' or 'Z')
        {
            // 60012RS: the 2 belongs to the seal, unless the longer number exists too.
            if (AlsoANumber().IsMatch(number)) problem = $"{number} is not in the table; write {number[..^1]}-2{rest} if that is meant";
            else (number, rest) = (number[..^1], "2" + rest);
        }
        else if (!Known(number)) problem = $"{number} is not in the table, which holds metric deep groove ball bearings with bores of 3 to 50 mm; give bore, outside and width as measured";
        if (problem.Length > 0) return false;

        var marks = Marks(rest);
        var closure = Said(marks, "closure");
        var clearance = Said(marks, "clearance");
        var tolerance = Said(marks, "class");
        var unread = marks.Any(m => m.Says.Length == 0);
        var shields = closure.FirstOrDefault() ?? (unread ? null : "open");
        problem = Problem(number, marks, closure.Count, clearance.Count, tolerance.Count, shields);
        if (problem.Length > 0) return false;

        var row = BearingTable.Open(number) ?? BearingTable.WithShields(number)!;
        var flanged = kind is "F" or "MF";
        var flange = flanged ? Flange(row.Basic, shields) : null;
        designation = new BearingDesignation
        {
            Text = text,
            Prefix = head.Groups["prefix"].Value,
            Number = number,
            Basic = row.Basic,
            Bore = row.Bore,
            Outside = row.Outside,
            Width = BearingWidth.Of(number, shields),
            Flanged = flanged,
            FlangeOutside = flange?.Outside,
            FlangeWidth = flange?.Width,
            Shields = shields,
            Clearance = clearance.FirstOrDefault() ?? (unread ? null : "CN"),
            ClearanceWritten = clearance.Count > 0,
            Class = tolerance.FirstOrDefault() ?? "Normal",
            Marks = marks,
        };
        return true;
    }

    // Capitals, single spaces, plain dashes; ABEC and 2 together with what belongs to them.
    private static string Tidy(string text)
    {
        var capitals = string.Concat(text.Select(c => char.IsAsciiLetterLower(c) ? (char)(c - 'a' + 'A') : c));
        var tidy = Spaces().Replace(Dashes().Replace(capitals, "-"), " ").Trim(' ');
        return LoneTwo().Replace(Abec().Replace(tidy, " ABEC$1 "), "2");
    }

    private static bool Known(string number) => BearingTable.Open(number) is not null || BearingTable.WithShields(number) is not null;

    private static string Problem(string number, List<BearingMark> marks, int closures, int clearances, int classes, string? shields)
    {
        if (marks.FirstOrDefault(m => !Plausible().IsMatch(m.Text)) is { } odd) return $"'{odd.Text}' is not part of any bearing number; leave it out";
        if (marks.FirstOrDefault(m => OtherBore().IsMatch(m.Text)) is { } bore)
            return $"'{bore.Text}' after {number} may be a bore of its own (6202-10 is often 5/8 inch); leave it out and measure the bore";
        if (marks.Any(m => m.Text == "K")) return "K is a tapered bore, and the table holds cylindrical bores only";
        if (closures > 1) return "it names two closures; write the one that it has";
        if (clearances > 1 || classes > 1) return "it names two clearances or two tolerance classes; write the one that it has";
        return BearingTable.Open(number) is null && number.Contains('/', StringComparison.Ordinal) && shields != "2Z"
            ? $"the table has {number} with shields on both sides only; write {number}-2Z if that is meant" : "";
    }

    private static List<string> Said(List<BearingMark> marks, string what) =>
        [.. marks.Where(m => m.Says.Split(" and ").Contains(what)).Select(m => m.Says == what ? m.Value : m.Value.Split(' ')[what == "class" ? 0 : 1]).Distinct()];

    // The flange may be another with shields; a closure that is not listed has it only where both are the same.
    private static BearingFlange? Flange(string basic, string? shields)
    {
        var name = BearingTable.FlangedName(basic);
        var fitting = BearingTable.Flanges.Where(f => f.Basic == name && (f.Form == "both" || (shields == "open" ? f.Form == "open" : shields != "2Z" || f.Form == "shielded"))).ToList();
        var both = fitting.Count == 1 && (shields is "open" or "2Z" || fitting[0].Form == "both");
        return both || (fitting.Count == 2 && (fitting[0].Outside, fitting[0].Width) == (fitting[1].Outside, fitting[1].Width)) ? fitting[0] : null;
    }

    private static List<BearingMark> Marks(string rest)
    {
        var marks = new List<BearingMark>();
        foreach (var word in rest.Split([' ', '-', '/', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            var (found, left) = Peel(word);
            // 'ZX' need not begin with a shield: a single letter counts only where the whole word can be read.
            if (left.Length > 0 && found.Any(m => m.Text.Length == 1)) (found, left) = ([], word);
            marks.AddRange(found);
            if (left.Length > 0) marks.Add(BearingMark.Unread(left));
        }
        return marks;
    }

    // A letter group ends where no figure follows: C40 does not begin with C4.
    private static (List<BearingMark> Found, string Left) Peel(string word)
    {
        if (BearingTable.Marks.FirstOrDefault(m => m.Text == word) is { } whole) return ([whole], "");
        var found = new List<BearingMark>();
        while (word.Length > 0)
        {
            var next = BearingTable.Marks.FirstOrDefault(m => m.Glued && word.StartsWith(m.Text, StringComparison.Ordinal)
                && !(char.IsAsciiDigit(m.Text[^1]) && word.Length > m.Text.Length && char.IsAsciiDigit(word[m.Text.Length])));
            if (next is null) break;
            found.Add(next);
            word = word[next.Text.Length..];
        }
        return (found, word);
    }

    private const RegexOptions Plain = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    [GeneratedRegex("[\u2010-\u2015\u2212]", Plain)]
    private static partial Regex Dashes();

    [GeneratedRegex("[ \t\r\n\u00A0]+", Plain)]
    private static partial Regex Spaces();

    [GeneratedRegex("(?<![A-Z0-9])ABEC[ -]*([0-9])(?![0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Abec();

    [GeneratedRegex("(?<![A-Z0-9])2[ -]+(?=(RS|RZ|Z|TS))", Plain)]
    private static partial Regex LoneTwo();

    [GeneratedRegex(@"^[0-9.]+ ?(MM)? ?[X×*] ?[0-9]", Plain)]
    private static partial Regex Sizes();

    [GeneratedRegex(@"^(SS|S|W)?[ -]?F?R ?-?[0-9]", Plain)]
    private static partial Regex Inch();

    [GeneratedRegex(@"^(?<prefix>SS|S|W)?[ -]?(?<kind>MF|MR|F)?[ -]?(?<number>(6[0-4]|61[789]|628|638) ?/ ?(?!2(RS|RZ|Z))[0-9]{1,3}|[0-9]{2,6})(?<rest>([^0-9].*)?)$", Plain)]
    private static partial Regex Head();

    // A four-figure number and the wide series 622, 623 and 630 exist in larger sizes.
    [GeneratedRegex("^6([0-9]{3}|2[23][0-9]{2}|30[0-9]{2})$", Plain)]
    private static partial Regex AlsoANumber();

    [GeneratedRegex(@"^[A-Z0-9.+()]{1,16}$", Plain)]
    private static partial Regex Plausible();

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)?(MM|IN)?$", Plain)]
    private static partial Regex OtherBore();
}
