using Crossref.Core.Checking.Rules;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Sheets;

/// <summary>What the library knows already, by what a sheet names it with, and the ids that are still free.</summary>
internal sealed class KnownRecords
{
    private readonly Library _library;
    private readonly Dictionary<(string, string), Part> _byMaker = [];
    private readonly ILookup<string, Part> _byNumber;
    private readonly HashSet<string> _taken;

    internal KnownRecords(Library library)
    {
        _library = library;
        _taken = [.. library.Records.Keys];
        _byNumber = library.Parts.Values.SelectMany(p => p.AllNumbers.Select(n => (Form: NumberForm.Of(n), Part: p))).Where(n => n.Form.Length > 0).ToLookup(n => n.Form, n => n.Part, StringComparer.Ordinal);
        foreach (var part in library.Parts.Values)
        {
            foreach (var number in part.Numbers.Concat(part.EarlierNumbers)) _byMaker.TryAdd(Key(part.Maker, number.Id), part);
        }
    }

    /// <summary>A maker and a number as one compares them.</summary>
    internal static (string Maker, string Number) Key(string? maker, string number) => ((maker ?? "").Trim().ToUpperInvariant(), NumberForm.Of(number));

    internal IRecord? WithId(string id) => _library.Records.GetValueOrDefault(id);

    internal Part? WithNumber((string Maker, string Number) key) => _byMaker.GetValueOrDefault(key);

    /// <summary>The parts that a word in a sheet may mean: the one of that id, else those with that number.</summary>
    internal IReadOnlyList<Part> Meant(string word) =>
        _library.Parts.TryGetValue(word, out var part) ? [part] : [.. _byNumber[NumberForm.Of(word)].Distinct()];

    internal void Take(string id) => _taken.Add(id);

    /// <summary>A free id made of words, or null when they hold nothing to make one of.</summary>
    internal string? Mint(string words)
    {
        var start = string.Join('-', string.Concat(Core.Lookup.TextFold.Fold(words).Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (start.Length == 0) return null;
        for (var number = ScalarChecker.DeviceNames.Contains(start) ? 2 : 1; ; number++)
        {
            var end = number == 1 ? "" : FormattableString.Invariant($"-{number}");
            var id = start[..Math.Min(start.Length, ScalarChecker.LongestId - end.Length)].TrimEnd('-') + end;
            if (_taken.Add(id)) return id;
        }
    }

    /// <summary>The id of a bag that has none: the same for the same row, however often it is read.</summary>
    internal static string BagId(string part, string says)
    {
        var start = new string([.. part.Where(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-').Take(28)]).Trim('-');
        return $"b-{(start.Length > 0 ? start + "-" : "")}{NewFiles.Fingerprint(says)}";
    }
}
