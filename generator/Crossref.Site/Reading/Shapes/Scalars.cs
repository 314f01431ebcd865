using System.Globalization;
using System.Text.RegularExpressions;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Shapes;

/// <summary>Reads the small forms of text that are neither quantities nor dates.</summary>
internal static partial class Scalars
{
    /// <summary>A plain number such as <c>4</c> or <c>0.5</c>; no grouping, no exponent.</summary>
    internal static bool TryNumber(string text, out decimal number)
    {
        number = 0;
        return Plain().IsMatch(text) &&
            decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number);
    }

    /// <summary>A life such as <c>400000 cycles</c>, above zero. 400.000 is no life: many mean four hundred thousand by it.</summary>
    internal static bool TryLife(string text, out Count life)
    {
        life = default;
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length != 2 || Words.Parse<CountUnit>(words[1]) is not { } unit || !TryNumber(words[0], out var number) || words[0].Split('.') is [_, { Length: 3 }] || number is <= 0 or > Values.Largest) return false;
        life = new Count(number, unit);
        return true;
    }

    /// <summary>A waiting time such as <c>45 min</c> or <c>1.5 h</c>, up to a week.</summary>
    internal static bool TryWait(string text, out TimeSpan wait)
    {
        wait = default;
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length != 2 || words[1] is not ("min" or "h") || !TryNumber(words[0], out var number)) return false;
        var minutes = words[1] == "h" ? number * 60 : number;
        if (minutes is < 0 or > 7 * 24 * 60) return false;
        wait = TimeSpan.FromMinutes((double)minutes);
        return true;
    }

    [GeneratedRegex(@"^-?[0-9]{1,15}(\.[0-9]{1,12})?\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Plain();
}
