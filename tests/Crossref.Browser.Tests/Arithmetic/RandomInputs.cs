using System.Globalization;
using System.Text.RegularExpressions;
using Crossref.Core.Arithmetic;
using Crossref.Core.Quantities;

namespace Crossref.Browser.Tests.Arithmetic;

/// <summary>Inputs for a calculator that follow from what it asks for: a known case with some of it changed, or something of its own.</summary>
internal sealed partial class RandomInputs(Calculator calculator, IReadOnlyList<IReadOnlyDictionary<string, string>> cases, int seed)
{
    private static readonly string[] Odd =
    [
        "0", "-3", "17,02", "1,200,000", "1e5", "1.5.2", "17 +/- 20", "0.669 in", "12 +/- 0.005 mm", "12±0.1", "1000000001", "999999999.999", "00012", "12 furlong",
        "1/2", " 7 ", "abc", "±", "<b>x</b>", "0.000000001", "١٢", "−5", "12 MM", "Infinity", "3 +/- 3", ".5", "5.", "+5", "12 mm mm", "2.5 +/-", "0.5", "100000", "100001",
    ];

    private readonly Random _random = new(seed);

    internal IEnumerable<IReadOnlyDictionary<string, string>> Take(int count) => Enumerable.Range(0, count).Select(_ => Next());

    private Dictionary<string, string> Next()
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var known = _random.Next(3) > 0 ? cases[_random.Next(cases.Count)] : new Dictionary<string, string>();
        foreach (var input in calculator.Inputs)
        {
            var text = known.Count > 0 && _random.Next(3) > 0 ? known.GetValueOrDefault(input.Name)
                : input.Required || _random.Next(2) == 0 ? Text(input)
                : null;
            if (text is not null) texts[input.Name] = text;
        }
        return texts;
    }

    private string Text(CalculatorInput input)
    {
        if (_random.Next(15) == 0) return Pick(Odd);
        if (input.Choices.Count > 0) return _random.Next(6) == 0 ? Pick(input.Choices).ToUpperInvariant() : Pick(input.Choices);
        var written = cases.Select(c => c.GetValueOrDefault(input.Name)).Append(input.Example).OfType<string>().Where(t => t.Length > 0).ToList();
        if (input.Measures is not { } dimension) return written.Count == 0 ? "x" : _random.Next(2) == 0 ? Pick(written) : Misspelt(Pick(written));
        var near = written.Count > 0 && Number().Match(Pick(written)) is { Success: true } match ? double.Parse(match.Value, CultureInfo.InvariantCulture) : 10;
        var value = near * Math.Pow(2, _random.NextDouble() * 2 - 1);
        return input.Whole ? Figure.Number(Math.Max(value, 1), 0) : Quantity(value, dimension);
    }

    private string Quantity(double value, Dimension dimension)
    {
        var (symbol, factor) = _random.Next(4) == 0 ? Pick([.. UnitTable.Factors(dimension)]) : ("", 1m);
        var own = value / (double)factor;
        var width = _random.Next(3) == 0 ? $" +/- {Figure.Number(own / _random.Next(20, 2000), 6)}" : "";
        return $"{Figure.Number(own, _random.Next(0, 5))}{width} {symbol}".TrimEnd();
    }

    private string Misspelt(string text)
    {
        var at = _random.Next(text.Length);
        return _random.Next(3) switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, ((char)_random.Next(' ', '~')).ToString()),
            _ => text[..at] + (char)_random.Next('0', '9' + 1) + text[(at + 1)..],
        };
    }

    private T Pick<T>(IReadOnlyList<T> from) => from[_random.Next(from.Count)];

    [GeneratedRegex(@"-?[0-9]+(\.[0-9]+)?")]
    private static partial Regex Number();
}
