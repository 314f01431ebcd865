using System.CommandLine;
using Crossref.Cli.Asking;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref record</c>: a finding, by flags or by questions.</summary>
internal static class RecordCommand
{
    private static readonly string[] Fact = ["part", "at", "replaces", "where"];
    private static readonly string[] Counts = [.. Words.All<CountUnit>()];

    internal static Command Create(CommonOptions options)
    {
        var recording = new Recording(options);
        var ask = new Option<bool>("--ask") { Description = "Ask for what is missing, also when nobody sits at the keyboard" };
        var flags = ClaimForm.Fields.ToDictionary(f => f.Name, FieldOption.Of, StringComparer.Ordinal);
        var command = new Command("record", "Record a finding: a part that fits, fits with a change, or does not fit. Without flags it asks.") { recording.DryRun, ask };
        foreach (var field in ClaimForm.Fields) command.Options.Add(flags[field.Name]);
        command.Subcommands.Add(RecordRepairCommand.Create(options));
        command.SetAction(parsed =>
        {
            var fields = FieldOption.Given(flags, parsed);
            var missing = Missing(fields);
            if (missing.Count > 0 && (parsed.GetValue(ask) || options.AtKeyboard))
            {
                return recording.Ask(parsed, known =>
                {
                    var given = Resolved(known.Library, fields);
                    return () => new FindingQuestions(known, given);
                });
            }
            if (missing.Count > 0)
                throw new CannotRunException($"Too little to record: {string.Join(", ", missing)} missing.", "Give them as flags; crossref record --help explains each. At a keyboard crossref record asks for them.");
            return recording.Run(parsed, desk => [desk.Claim(Resolved(desk.Library, fields))]);
        });
        return command;
    }

    /// <summary>
    /// The fields with parts named by a number and positions named by their ending as their ids. A withdrawal that names
    /// nothing speaks of what the claim that it takes back speaks of.
    /// </summary>
    internal static Dictionary<string, string> Resolved(Library library, IReadOnlyDictionary<string, string> fields)
    {
        var resolved = new Dictionary<string, string>(fields, StringComparer.Ordinal);
        if (fields.TryGetValue("withdraws", out var withdrawn) && !fields.Keys.Any(Fact.Contains))
            foreach (var (name, about) in Fact.Zip(FactOf(library, withdrawn)))
                if (about is { } known) resolved[name] = known.Id;
        foreach (var name in new[] { "part", "replaces" })
            if (fields.TryGetValue(name, out var part)) resolved[name] = Known.Part(library, part);
        if (fields.TryGetValue("at", out var at)) resolved["at"] = Known.Position(library, at, fields.GetValueOrDefault("machine"));
        return resolved;
    }

    // What a claim, or what a repair fitted under the id repair/position, speaks of.
    private static Ref?[] FactOf(Library library, string withdrawn)
    {
        if (library.Claims.TryGetValue(withdrawn, out var claim)) return [claim.Part, claim.At, claim.Replaces, claim.Where];
        if (withdrawn.Split('/', 2) is [var repair, var place] && library.Repairs.TryGetValue(repair, out var job) &&
            job.Fitted.FirstOrDefault(f => f.Position.Id.EndsWith("/" + place, StringComparison.Ordinal)) is { } fitting) return [fitting.Part, fitting.Position];
        Known.Require(withdrawn, library.Claims.Keys, "claim", "Every claim stands with its id on the page Claims of the site; what a repair fitted is called REPAIR/POSITION.");
        return [];
    }

    /// <summary>Which flags a finding still needs.</summary>
    internal static IReadOnlyList<string> Missing(IReadOnlyDictionary<string, string> fields)
    {
        var missing = new List<string>();
        void Need(bool needed, params string[] names)
        {
            if (needed && !names.Any(fields.ContainsKey)) missing.Add("--" + string.Join(" or --", names));
        }
        var isAbout = !fields.ContainsKey("withdraws") || fields.Keys.Any(Fact.Contains);
        Need(isAbout, "part");
        Need(isAbout, "at", "replaces");
        Need(!fields.ContainsKey("withdraws"), "verdict");
        Need(fields.ContainsKey("verdict") || !fields.ContainsKey("withdraws"), "basis");
        Need(fields.GetValueOrDefault("basis") == Words.Of(Basis.Ran), Counts);
        Need(fields.GetValueOrDefault("verdict") == Words.Of(Verdict.FitsWithChange), "change");
        return missing;
    }
}
