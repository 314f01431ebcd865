using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>
/// Turns local names into addresses. A repair writes positions as somebody at the machine says them; which family
/// they belong to stands in the machine's or the unit's own document, so all documents are looked through first.
/// </summary>
internal sealed class AddressBook
{
    private readonly Dictionary<string, string> _machines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Family, string Assembly)> _units = new(StringComparer.Ordinal);
    private readonly HashSet<string> _assemblies = new(StringComparer.Ordinal);
    private readonly HashSet<string> _families = new(StringComparer.Ordinal);

    internal AddressBook(IEnumerable<RawRecord> records)
    {
        foreach (var record in records)
        {
            var fields = new Fields(record.Map);
            var family = fields.Text("family");
            if (record.Type == RecordType.Family)
            {
                _families.Add(record.Id);
                _assemblies.UnionWith(fields.Maps("assemblies").Select(a => $"{record.Id}/{a.Text("assembly")}"));
            }
            if (record.Type == RecordType.Machine && family is not null) _machines.TryAdd(record.Id, family);
            if (record.Type == RecordType.Unit && family is not null && fields.Text("assembly") is { } assembly) _units.TryAdd(record.Id, (family, assembly));
        }
    }

    /// <summary>The family of the machine or unit a repair worked on; null when it is not known.</summary>
    internal string? FamilyOf(Ref? machine, Ref? unit)
    {
        var family = machine is { } m ? _machines.GetValueOrDefault(m.Id) : unit is { } u && _units.TryGetValue(u.Id, out var home) ? home.Family : null;
        return family is not null && _families.Contains(family) ? family : null;
    }

    /// <summary>Whether there is such a family.</summary>
    internal bool Knows(string family) => _families.Contains(family);

    /// <summary>Whether there is such an assembly. What is local to an unknown one is not looked up: that is one mistake, not two.</summary>
    internal bool Knows(string family, string assembly) => _assemblies.Contains($"{family}/{assembly}");

    /// <summary>The local id of a unit's assembly; null when it is not known.</summary>
    internal string? AssemblyOf(Ref unit) => _units.TryGetValue(unit.Id, out var home) ? home.Assembly : null;

    /// <summary>
    /// A position's address from its local id, from assembly/position, or from an address already written out.
    /// Without a family or an assembly the reference stays empty and nothing looks it up.
    /// </summary>
    internal static Ref Position(Ref written, string? family, string? assembly)
    {
        var slashes = written.Id.Count(c => c == '/');
        var address = (slashes, family, assembly) switch
        {
            _ when written.Id.Length == 0 => "",
            ( >= 2, _, _) => written.Id,
            (_, null, _) or (0, _, null) => "",
            (1, _, _) => $"{family}/{written.Id}",
            _ => $"{family}/{assembly}/{written.Id}",
        };
        return written with { Id = address };
    }

    /// <summary>An assembly's address from its local id, or from an address already written out.</summary>
    internal static Ref Assembly(Ref written, string? family) =>
        written with { Id = written.Id.Contains('/', StringComparison.Ordinal) ? written.Id : family is null ? "" : $"{family}/{written.Id}" };
}
