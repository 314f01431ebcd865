using System.Globalization;
using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>What fits a position in each machine of its family, and how that differs from the answer for any machine.</summary>
internal sealed class MachineAnswers(Desk desk, PageLinks links)
{
    private readonly CandidateViews _views = new(desk, links);

    internal IReadOnlyList<MachineAnswer> At(Position position, FitsAnswer any) =>
        [.. desk.MachinesOf(position.Family).Select(m => For(m, position, any))];

    /// <summary>"F2S, serial 2217, 230 V".</summary>
    internal static string Facts(Library library, Machine machine)
    {
        var context = MachineContext.Of(library, machine);
        return string.Join(", ", new[]
        {
            context.Model ?? "model not on record",
            context.Serial is { } serial ? "serial " + serial : "serial not on record",
            context.Mains is { } volts ? string.Create(CultureInfo.InvariantCulture, $"{volts:0.##} V") : "mains not on record",
        });
    }

    private MachineAnswer For(Machine machine, Position position, FitsAnswer any)
    {
        var here = desk.Fits.At(position.Address, machine.Id);
        var best = here.Candidates.FirstOrDefault(c => c.Accepted);
        return new MachineAnswer
        {
            Machine = links.Machine(machine.Id),
            Facts = Facts(desk.Library, machine),
            Best = best is null ? null : _views.Of(best, here.Safety),
            Stock = best is null ? "" : _views.StockText(best.Part),
            Same = SameAs(here, any),
            Notes = [.. Differences(here, any)],
        };
    }

    private static bool SameAs(FitsAnswer here, FitsAnswer any) =>
        here.Candidates.Select(c => (c.Part, c.Accepted, c.Standing, c.Conditions.Count)).SequenceEqual(
            any.Candidates.Select(c => (c.Part, c.Accepted, c.Standing, c.Conditions.Count))) &&
        here.RuledOut.Select(r => r.Part).SequenceEqual(any.RuledOut.Select(r => r.Part)) &&
        here.Disputed.Select(r => r.Part).SequenceEqual(any.Disputed.Select(r => r.Part));

    // What is said of every machine is said above; here only what this machine changes.
    private IEnumerable<Phrase> Differences(FitsAnswer here, FitsAnswer any)
    {
        var best = here.Candidates.FirstOrDefault(c => c.Accepted)?.Part;
        foreach (var candidate in any.Candidates.Where(c => !c.IsLead && c.Part != best))
        {
            var now = here.Candidates.FirstOrDefault(c => c.Part == candidate.Part);
            if (here.RuledOut.FirstOrDefault(r => r.Part == candidate.Part) is { } no)
                yield return Phrase.Of("Not ", links.Part(candidate.Part), " here: ", no.Reason);
            else if (here.Disputed.Any(r => r.Part == candidate.Part))
                yield return Phrase.Of(links.Part(candidate.Part), " is disputed here.");
            else if (now is null)
                yield return Phrase.Of("Not ", links.Part(candidate.Part), ": it is for other machines.");
            else if (now.Accepted && !candidate.Accepted)
                yield return Phrase.Of(links.Part(candidate.Part), $" is accepted here, as {now.Standing}.");
        }
    }
}
