using System.Text.Json.Nodes;
using Crossref.Cli.Commands;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Printing;

/// <summary>Prints new records and the standings they change.</summary>
internal static class RecordPrinter
{
    private const int MostStandings = 12;

    /// <summary>What would be written, what it changes, and what is worth a look.</summary>
    internal static void PrintPreview(Recorded recorded, TextWriter output)
    {
        foreach (var record in recorded.Proposal.Records) PrintText(record, output);
        PrintChanges(recorded, output);
    }

    internal static void PrintChanges(Recorded recorded, TextWriter output)
    {
        PrintStandings(recorded.Proposal.After, recorded, output);
        DiagnosticPrinter.PrintLines(recorded.Proposal.Caused, output);
    }

    internal static void PrintFiles(Recorded recorded, bool written, TextWriter output)
    {
        foreach (var record in recorded.Proposal.Records)
        {
            if (record.IsKnown) output.WriteLine($"{record.Id} is on record already, in {record.File}. Nothing new was written.");
            else output.WriteLine(written ? $"Written: {record.File}" : $"Nothing was written. Without --dry-run it would be: {record.File}");
        }
    }

    internal static void PrintText(NewRecord record, TextWriter output)
    {
        output.WriteLine(record.File);
        foreach (var line in record.Text.TrimEnd('\n').Split('\n')) output.WriteLine("    " + line);
    }

    private static void PrintStandings(Library library, Recorded recorded, TextWriter output)
    {
        var pairs = recorded.Before.Zip(recorded.After).ToList();
        foreach (var (before, after) in pairs.Take(MostStandings))
        {
            output.WriteLine($"{Number(library, after.Part)} at {after.Position}{(after.Machine is { } m ? $" in {m}" : "")}: {Change(Word(before), Word(after))}");
            output.WriteLine($"    {after.Reason}");
            if (library.IsSafety(library.Positions[after.Position]) || library.Parts[after.Part].IsSafety)
                output.WriteLine("    A safety part: only what the maker's own document names for this machine counts as a fit.");
        }
        if (pairs.Count > MostStandings) output.WriteLine($"... and at {pairs.Count - MostStandings} more positions; --json prints them.");
    }

    internal static JsonObject ToJson(Recorded recorded, bool written)
    {
        var (first, others) = (recorded.Proposal.Records[0], recorded.Proposal.Records.Skip(1));
        var node = ToJson(first);
        node["written"] = written && !first.IsKnown;
        node["also"] = JsonPrinter.Array(others, ToJson);
        node["before"] = JsonPrinter.Array(recorded.Before, ToJson);
        node["after"] = JsonPrinter.Array(recorded.After, ToJson);
        node["diagnostics"] = DiagnosticPrinter.ToJson(recorded.Proposal.Caused)["diagnostics"]!.DeepClone();
        return node;
    }

    private static JsonObject ToJson(NewRecord record) => new() { ["id"] = record.Id, ["file"] = record.File, ["text"] = record.Text };

    private static JsonObject ToJson(Standing standing) => new()
    {
        ["part"] = standing.Part,
        ["position"] = standing.Position,
        ["machine"] = standing.Machine,
        ["standing"] = standing.Word,
        ["accepted"] = standing.Accepted,
        ["reason"] = standing.Reason,
    };

    private static string Word(Standing standing) => standing.Word == "nothing" ? "nothing recorded" : standing.Accepted ? $"{standing.Word}, accepted" : $"{standing.Word}, not an answer";

    private static string Change(string before, string after) => before == after ? $"stays {after}" : $"{before} → {after}";

    private static string Number(Library library, string part) => library.Parts[part].CurrentNumber is var number && number == part ? part : $"{number} ({part})";
}
