using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>What to know before a cover comes off.</summary>
internal static class BenchViews
{
    internal static BenchView Of(Desk desk, PageLinks links, Position position)
    {
        var assembly = desk.Library.Assemblies[$"{position.Family}/{position.Assembly}"];
        return Of(links, assembly) with
        {
            DamagesNext = [.. Chain(desk, position).Select(a => links.Position(a))],
            BreaksWhenOpened = [.. position.BreaksWhenOpened.Select(b => links.Position(b.Id))],
        };
    }

    internal static BenchView Of(PageLinks links, Assembly assembly) => new()
    {
        Cool = Cool(assembly.Cool),
        Hazards = [.. assembly.Cautions.Select(h => Of(links, h))],
        Tools = assembly.Tools,
        Cautions = links.Overview("cautions", "All cautions"),
    };

    internal static HazardView Of(PageLinks links, Hazard hazard) =>
        new(new Link(links.Href(new PagePlace(PageMap.Overview("cautions"), PageMap.Anchor(hazard.Id))), hazard.Name), hazard.Advice);

    /// <summary>What suffers after a position, nearest first, each once, to the chain's end.</summary>
    internal static IReadOnlyList<string> Chain(Desk desk, Position position)
    {
        var chain = new List<string>();
        var open = new Queue<Position>([position]);
        while (open.TryDequeue(out var next))
        {
            foreach (var damaged in next.DamagesNext.Select(d => d.Id))
            {
                if (damaged == position.Address || chain.Contains(damaged)) continue;
                chain.Add(damaged);
                if (desk.Library.Positions.TryGetValue(damaged, out var found)) open.Enqueue(found);
            }
        }
        return chain;
    }

    private static string Cool(TimeSpan? cool) => cool switch
    {
        null => "How long it must cool is not on record. Measure before touching.",
        { Ticks: 0 } => "No cooling time is needed.",
        { TotalMinutes: < 120 } time => FormattableString.Invariant($"Let it cool {time.TotalMinutes:0} minutes, then measure before touching."),
        { } time => FormattableString.Invariant($"Let it cool {time.TotalHours:0.#} hours, then measure before touching."),
    };
}
