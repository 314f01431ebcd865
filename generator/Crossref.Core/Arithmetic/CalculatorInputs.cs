using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic;

/// <summary>What somebody wrote into a calculator, read as what it was asked for. Collects everything that is wrong with it.</summary>
public sealed class CalculatorInputs
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Quantity> _quantities = new(StringComparer.Ordinal);
    private readonly List<InputProblem> _problems = [];

    /// <summary>Reads all inputs of a calculator; an input that is not there or empty counts as not given.</summary>
    public CalculatorInputs(IReadOnlyList<CalculatorInput> declared, IReadOnlyDictionary<string, string> texts)
    {
        foreach (var input in declared)
        {
            var text = texts.TryGetValue(input.Name, out var written) ? written.Trim() : "";
            if (text.Length == 0) text = input.Default;
            if (text.Length > 0) Read(input, text);
            else if (input.Required) Refuse(input.Name, $"write {Lower(input.Label)}{(input.Example.Length > 0 ? ", such as " + input.Example : input.Choices.Count > 0 ? ", one of " + string.Join(", ", input.Choices) : "")}");
        }
    }

    /// <summary>What is wrong, in the order of the inputs.</summary>
    public IReadOnlyList<InputProblem> Problems => _problems;

    /// <summary>Whether a readable value was given.</summary>
    public bool Has(string name) => _texts.ContainsKey(name) || _quantities.ContainsKey(name);

    /// <summary>A word; null when none was given.</summary>
    public string? Text(string name) => _texts.GetValueOrDefault(name);

    /// <summary>A quantity as written; null when none was given or it cannot be read.</summary>
    public Quantity? Quantity(string name) => _quantities.TryGetValue(name, out var quantity) ? quantity : null;

    /// <summary>A quantity with its uncertainty, in its dimension's unit; null when none was given or it cannot be read.</summary>
    public Interval? Measure(string name) => Quantity(name) is { } quantity ? Interval.Of(quantity) : null;

    /// <summary>A quantity's value alone; null when none was given or it cannot be read.</summary>
    public double? Value(string name) => Quantity(name) is { } quantity ? (double)quantity.Value : null;

    /// <summary>A whole number; null when none was given or it cannot be read.</summary>
    public int? Count(string name) => Quantity(name) is { } quantity ? (int)quantity.Value : null;

    /// <summary>Notes that an input will not do: what is wrong, and what to write instead.</summary>
    public void Refuse(string name, string message) => _problems.Add(new InputProblem(name, message));

    private void Read(CalculatorInput input, string text)
    {
        if (input.Measures is not { } dimension)
        {
            if (input.Choices.Count == 0) _texts[input.Name] = text;
            else if (input.Choices.FirstOrDefault(c => c.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } choice) _texts[input.Name] = choice;
            else Refuse(input.Name, $"'{text}' is none of {string.Join(", ", input.Choices)}");
        }
        else if (!QuantityParser.TryParse(text, dimension, out var quantity, out var problem)) Refuse(input.Name, problem);
        else if (input.Whole && (quantity.Value != decimal.Truncate(quantity.Value) || quantity.Value < Least(input) || quantity.Value > 100_000 || quantity.Uncertainty != 0))
            Refuse(input.Name, $"write a whole number from {Least(input)} to 100000");
        else if (!input.MayBeZeroOrLess && Interval.Of(quantity).Low <= 0) Refuse(input.Name, "write a number above zero, also after its uncertainty is taken off");
        else _quantities[input.Name] = quantity;
    }

    private static int Least(CalculatorInput input) => input.MayBeZeroOrLess ? 0 : 1;

    private static string Lower(string label) => label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
