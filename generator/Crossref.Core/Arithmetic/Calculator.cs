using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic;

/// <summary>One piece of the trade's arithmetic that shows its working. The command and the page of its name follow from it.</summary>
/// <param name="Name">The command's name and the page's file name: <c>gear</c>.</param>
/// <param name="Title">The page's title: "Gear from its teeth and tip".</param>
/// <param name="Purpose">What it is for, in one sentence; the command's help shows it.</param>
/// <param name="Inputs">What it asks for, the argument first.</param>
/// <param name="Work">Lays the working out; null after it has refused an input.</param>
public sealed record Calculator(
    string Name, string Title, string Purpose, IReadOnlyList<CalculatorInput> Inputs, Func<CalculatorInputs, OnRecord, Working?> Work)
{
    /// <summary>Whether it looks at what the library has on record.</summary>
    public bool LooksAtRecords { get; init; }

    /// <summary>The kind of part of which it says sizes, so that parts like it can be looked for: the one whose name it bears; null for none.</summary>
    public PartKind? Seeks => PartKind.Find(Name);

    /// <summary>Works out what was written, by the inputs' names.</summary>
    /// <param name="texts">What was written.</param>
    /// <param name="record">What the library has on record; <see cref="OnRecord.Nothing"/> when there is none.</param>
    public CalculatorResult Run(IReadOnlyDictionary<string, string> texts, OnRecord record)
    {
        var inputs = new CalculatorInputs(Inputs, texts);
        if (inputs.Problems.Count > 0) return new CalculatorResult(null, inputs.Problems);
        var working = Work(inputs, record);
        return inputs.Problems.Count > 0 ? new CalculatorResult(null, inputs.Problems) : new CalculatorResult(working, []);
    }
}
