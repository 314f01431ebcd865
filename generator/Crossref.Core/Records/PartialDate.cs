using System.Globalization;

namespace Crossref.Core.Records;

/// <summary>
/// A date as exactly as somebody knew it: a day, a month, a year, or nothing. Ordered by what is known; the less is
/// known, the earlier it counts within the same month or year, so that a vague date never passes for the latest.
/// </summary>
public readonly record struct PartialDate(int Year, int Month, int Day) : IComparable<PartialDate>
{
    /// <summary>Not known.</summary>
    public static PartialDate Unknown => default;

    /// <summary>Whether nothing is known.</summary>
    public bool IsUnknown => Year == 0;

    /// <summary>
    /// Reads <c>2026-02-11</c>, <c>2026-02</c>, <c>2026</c> or <c>unknown</c>. False for anything else and for days
    /// that the calendar does not have; years run from 1900 to 2199.
    /// </summary>
    public static bool TryParse(string text, out PartialDate date)
    {
        date = Unknown;
        if (text == "unknown") return true;
        var parts = text.Split('-');
        if (parts.Length > 3 || !Digits(parts[0], 4, out var year) || year is < 1900 or > 2199) return false;
        var (month, day) = (0, 0);
        if (parts.Length > 1 && (!Digits(parts[1], 2, out month) || month is < 1 or > 12)) return false;
        if (parts.Length > 2 && (!Digits(parts[2], 2, out day) || day < 1 || day > DateTime.DaysInMonth(year, month))) return false;
        date = new PartialDate(year, month, day);
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(PartialDate other) => (Year, Month, Day).CompareTo((other.Year, other.Month, other.Day));

    /// <summary>The first day it may mean; null when unknown.</summary>
    public DateOnly? Earliest => IsUnknown ? null : new DateOnly(Year, Math.Max(Month, 1), Math.Max(Day, 1));

    /// <summary>The last day it may mean; null when unknown.</summary>
    public DateOnly? Latest => (IsUnknown, Month, Day) switch
    {
        (true, _, _) => null,
        (_, 0, _) => new DateOnly(Year, 12, 31),
        (_, _, 0) => new DateOnly(Year, Month, DateTime.DaysInMonth(Year, Month)),
        _ => Earliest,
    };

    /// <summary>Whether it is earlier than another date whatever day either may mean.</summary>
    public bool SurelyBefore(PartialDate other) => Latest < other.Earliest;

    /// <summary>As written.</summary>
    public override string ToString() => (IsUnknown, Month, Day) switch
    {
        (true, _, _) => "unknown",
        (_, 0, _) => Year.ToString("0000", CultureInfo.InvariantCulture),
        (_, _, 0) => FormattableString.Invariant($"{Year:0000}-{Month:00}"),
        _ => FormattableString.Invariant($"{Year:0000}-{Month:00}-{Day:00}"),
    };

    /// <summary>Earlier than.</summary>
    public static bool operator <(PartialDate left, PartialDate right) => left.CompareTo(right) < 0;
    /// <summary>Later than.</summary>
    public static bool operator >(PartialDate left, PartialDate right) => left.CompareTo(right) > 0;
    /// <summary>Not later than.</summary>
    public static bool operator <=(PartialDate left, PartialDate right) => left.CompareTo(right) <= 0;
    /// <summary>Not earlier than.</summary>
    public static bool operator >=(PartialDate left, PartialDate right) => left.CompareTo(right) >= 0;

    private static bool Digits(string text, int length, out int value)
    {
        value = 0;
        return text.Length == length && text.All(char.IsAsciiDigit) &&
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }
}
