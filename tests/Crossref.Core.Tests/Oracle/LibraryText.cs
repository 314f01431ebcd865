using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>A library in a few lines, so that a failure can be read and typed again.</summary>
internal static class LibraryText
{
    internal static string Of(Draft draft) => string.Join("\n", draft.Records.SelectMany(Lines).Prepend(Line("library", draft.Card.Id,
        ("mains", draft.Card.Mains), ("accept-from", draft.Card.AcceptFrom), ("proving", draft.Card.Proving))));

    private static IEnumerable<string> Lines(IRecord record) => record switch
    {
        Source s => [Line("source", s.Id, ("type", s.Kind), ("retired", Yes(s.Retired)))],
        Part p => [Line("part", p.Id, ("kind", p.Kind), ("source", p.Source), ("superseded-by", p.SupersededBy), ("standard", p.Standard),
            ("size", Many(p.Sizes.Select(s => $"{s.Key} {(s.Value.Quantity is { } q ? $"{q.Value} ± {q.Uncertainty}" : s.Value.Text)}"))), ("life", p.Life),
            ("safety", Yes(p.Safety)), ("retired", Yes(p.Retired)))],
        Family f => f.Assemblies.SelectMany(a => a.Positions).Select(p => Line("  position", p.Address, ("kind", p.Kind),
                ("source", p.Source), ("safety", Yes(p.Safety)), ("listed", Many(p.Listed.Select(l => l.Part + If(l.OnlyIf))))))
            .Prepend(Line("family", f.Id, ("retired", Yes(f.Retired)))),
        Machine m => [Line("machine", m.Id, ("family", m.Family), ("model", m.Model), ("serial", m.Serial), ("mains", m.Mains), ("retired", Yes(m.Retired)),
            ("readings", Many(m.Readings.Select(r => $"{r.Date} {r.Count}{(r.Reset ? " reset" : "")}{(r.Counter is null ? "" : " " + r.Counter)}"))))],
        Repair r => [Line("repair", r.Id, ("machine", r.Machine), ("unit", r.Unit), ("date", r.Date), ("counter", r.Counter),
            ("fitted", Many(r.Fitted.Select(f => $"{f.Position} {f.Part}{(f.Change is null ? "" : " change " + f.Change)}"))),
            ("removed", Many(r.Removed.Select(x => $"{x.Position} {x.Part} {x.Condition}"))),
            ("found", Many(r.Found.Select(f => $"{f.Position} {f.Condition}"))), ("swapped", r.Swapped?.Assembly),
            ("damaged", r.NeighboursDamaged), ("retired", Yes(r.Retired)))],
        Claim c => [Line("claim", c.Id, ("part", c.Part), ("at", c.At), ("replaces", c.Replaces), ("where", c.Where),
            ("both-ways", Yes(c.BothWays)), ("verdict", c.Verdict), ("basis", c.Basis), ("run", c.Run), ("only-if", Blank(If(c.OnlyIf))),
            ("change", c.Change), ("machine", c.Machine), ("damaged", c.NeighboursDamaged), ("source", c.Source), ("date", c.Date),
            ("withdraws", c.Withdraws), ("retired", Yes(c.Retired)))],
        _ => [record.Type + " " + record.Id],
    };

    private static string Line(string type, string id, params (string Key, object? Value)[] fields) =>
        type + " " + id + string.Concat(fields.Where(f => f.Value is not null).Select(f => $"; {f.Key} {f.Value}"));

    private static string If(Condition onlyIf) =>
        onlyIf.IsNone ? "" : " (" + string.Join(", ", NaiveConditions.Terms(onlyIf).Select(NaiveConditions.Words)) + ")";

    private static string? Blank(string text) => text.Length == 0 ? null : text;

    private static string? Many(IEnumerable<string> texts) => Blank(string.Join(" | ", texts));

    private static string? Yes(bool value) => value ? "true" : null;
}
