using System.Numerics;
using Crossref.Core.Records;

namespace Crossref.Core.Checking.Rules;

/// <summary>A serial as a range compares it: what stands before its last digits, and those digits as a number.</summary>
internal readonly record struct Serial(string Letters, BigInteger Number)
{
    /// <summary>Null when the serial does not end in digits.</summary>
    internal static Serial? Read(string text)
    {
        var start = text.Length;
        while (start > 0 && char.IsAsciiDigit(text[start - 1])) start--;
        return start == text.Length ? null : new Serial(text[..start], BigInteger.Parse(text.AsSpan(start), provider: System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>Every condition of the library that has a range closed at both ends, or open at one.</summary>
    internal static IEnumerable<Condition> Ranges(CheckScope scope) =>
        scope.Whole<Family>().SelectMany(f => f.Assemblies).SelectMany(a => a.Positions).SelectMany(p => p.Listed).Select(l => l.OnlyIf)
            .Concat(scope.Whole<Claim>().Select(c => c.OnlyIf))
            .Where(c => c.SerialFrom is not null || c.SerialTo is not null);
}
