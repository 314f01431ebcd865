namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>How people type numbers: with a slip, with other separators, with letters for digits.</summary>
public static class Mistyping
{
    private const string Keys = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

    /// <summary>The slips that <see cref="Slip"/> makes.</summary>
    public static IReadOnlyList<string> Slips { get; } = ["other", "missing", "extra", "swap"];

    /// <summary>The number with one slip of a kind; separators stay where they are.</summary>
    public static string Slip(Random random, string number, string slip)
    {
        while (true)
        {
            var places = Enumerable.Range(0, number.Length).Where(i => char.IsAsciiLetterOrDigit(number[i])).ToArray();
            var pick = random.Next(places.Length - 1);
            var (at, next) = (places[pick], places[pick + 1]);
            var key = Keys[random.Next(Keys.Length)];
            var spoilt = number.ToCharArray().ToList();
            switch (slip)
            {
                case "other": spoilt[at] = key; break;
                case "missing": spoilt.RemoveAt(at); break;
                case "extra": spoilt.Insert(at, key); break;
                default: (spoilt[at], spoilt[next]) = (spoilt[next], spoilt[at]); break;
            }

            var text = string.Concat(spoilt);
            if (PlainScan.Form(text) != PlainScan.Form(number))
            {
                return text;
            }
        }
    }

    /// <summary>The number with every separator another one, or none, and small letters.</summary>
    public static string Separated(Random random, string number, string separators = "-./_ ") => string.Concat(
        number.ToLowerInvariant().SelectMany(c => char.IsAsciiLetterOrDigit(c) ? $"{c}" : random.Next(3) == 0 ? "" : $"{separators[random.Next(separators.Length)]}"));

    /// <summary>The number with letters and digits that look alike taken for each other.</summary>
    public static string Lookalikes(Random random, string number) => string.Concat(number.Select(c => c switch
    {
        '0' or 'O' => "0Oo"[random.Next(3)],
        '1' or 'I' or 'L' => "1IlLi"[random.Next(5)],
        _ => c,
    }));

    /// <summary>A piece of a number, three signs or more without its separators, and not from the first one on.</summary>
    public static string Middle(Random random, string number)
    {
        while (true)
        {
            var from = random.Next(1, number.Length - 2);
            var piece = number[from..random.Next(from + 3, number.Length + 1)];
            if (PlainScan.Form(piece).Length >= 3)
            {
                return piece;
            }
        }
    }
}
