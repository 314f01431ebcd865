using System.Text.Json.Nodes;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Printing;

/// <summary>Prints what fits a position.</summary>
internal sealed class FitsPrinter(Library library)
{
    internal void Print(FitsAnswer answer, TextWriter output)
    {
        var position = library.Positions[answer.Position];
        output.WriteLine($"{position.Name}  ({answer.Position})");
        if (answer.Machine is { } machine) output.WriteLine($"for {machine}");
        if (answer.Safety) output.WriteLine("Safety position: only what the maker's own document names for this machine counts.");
        Section("Fits", [.. answer.Candidates.Where(c => c.Accepted)], output);
        Section("Stands, but does not count as an answer here", [.. answer.Candidates.Where(c => !c.Accepted && !c.IsLead)], output);
        Section("Something to try, never an answer", [.. answer.Candidates.Where(c => c.IsLead)], output);
        Section("Disputed", answer.Disputed, output);
        Section("Ruled out", answer.RuledOut, output);
        if (answer.Candidates.Count + answer.Disputed.Count + answer.RuledOut.Count == 0) output.WriteLine("  Nothing is recorded for this position.");
    }

    internal static JsonObject ToJson(FitsAnswer answer) => new()
    {
        ["position"] = answer.Position,
        ["machine"] = answer.Machine,
        ["safety"] = answer.Safety,
        ["candidates"] = JsonPrinter.Array(answer.Candidates, ToJson),
        ["disputed"] = JsonPrinter.Array(answer.Disputed, ToJson),
        ["ruledOut"] = JsonPrinter.Array(answer.RuledOut, ToJson),
    };

    internal static JsonObject ToJson(Candidate candidate) => new()
    {
        ["part"] = candidate.Part,
        ["standing"] = candidate.Standing,
        ["accepted"] = candidate.Accepted,
        ["reason"] = candidate.Reason,
        ["steps"] = JsonPrinter.Array(candidate.Steps, ToJson),
        ["conditions"] = JsonPrinter.Array(candidate.Conditions),
        ["changes"] = JsonPrinter.Array(candidate.Changes),
        ["cautions"] = JsonPrinter.Array(candidate.Cautions),
        ["inHouse"] = JsonPrinter.Array(candidate.InHouse, ToJson),
    };

    internal static JsonObject ToJson(Refusal refusal) => new()
    {
        ["part"] = refusal.Part,
        ["reason"] = refusal.Reason,
        ["claims"] = JsonPrinter.Array(refusal.Claims),
    };

    private static JsonObject ToJson(PathStep step)
    {
        var node = new JsonObject
        {
            ["kind"] = Words.Of(step.Kind),
            ["from"] = step.From,
            ["to"] = step.To,
            ["standing"] = Words.Of(step.Standing),
            ["claims"] = JsonPrinter.Array(step.Claims),
            ["source"] = step.Source,
            ["locator"] = step.Locator,
        };
        if (step.Via is { } via) node["via"] = via;
        return node;
    }

    private static JsonObject ToJson(InHouse item) => new()
    {
        [Words.Of(item.Holder)] = item.Id,
        ["quantity"] = item.Quantity,
        ["grade"] = item.Grade is { } grade ? Words.Of(grade) : null,
        ["bin"] = item.Bin,
    };

    private void Section(string title, IReadOnlyList<Candidate> candidates, TextWriter output)
    {
        if (candidates.Count == 0) return;
        output.WriteLine();
        output.WriteLine(title);
        foreach (var candidate in candidates)
        {
            output.WriteLine($"  {Title(candidate.Part)} — {candidate.Standing}");
            output.WriteLine($"      {candidate.Reason}");
            if (candidate.Conditions.Count > 0) output.WriteLine($"      Check first: {string.Join("; ", candidate.Conditions)}");
            if (candidate.Changes.Count > 0) output.WriteLine($"      Change: {string.Join("; ", candidate.Changes)}");
            foreach (var item in candidate.InHouse)
                output.WriteLine($"      In the house: {item.Quantity} in {Words.Of(item.Holder)} {item.Id}{(item.Bin is { } bin ? $", {bin}" : "")}{(item.Grade is { } grade ? $", {Words.Of(grade)}" : "")}");
        }
    }

    private void Section(string title, IReadOnlyList<Refusal> refusals, TextWriter output)
    {
        if (refusals.Count == 0) return;
        output.WriteLine();
        output.WriteLine(title);
        foreach (var refusal in refusals)
        {
            output.WriteLine($"  {Title(refusal.Part)}");
            output.WriteLine($"      {refusal.Reason}");
        }
    }

    private string Title(string id) => library.Parts[id] is var part && part.Numbers.Count > 0 ? $"{part.CurrentNumber}  {part.Name} ({id})" : $"{part.Name} ({id})";
}
