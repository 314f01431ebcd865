using Crossref.Core.Interchange;
using Crossref.Core.Lookup;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Kinds;
using Crossref.Site.Pages.Pieces;

namespace Crossref.Site.Pages;

/// <summary>Makes one entry of the lookup index after the other.</summary>
internal sealed class LookupEntryMaker
{
    private readonly Library _library;
    private readonly PageMap _map;
    private readonly SizeText _sizes;
    private readonly House _house;
    private readonly Dictionary<string, Candidate> _best;
    private readonly ILookup<string, (string Family, Candidate Candidate)> _fits;

    internal LookupEntryMaker(Library library, PageMap map, IReadOnlyList<FitsAnswer> answers)
    {
        (_library, _map, _sizes, _house) = (library, map, new SizeText(library.Card.Inches), new House(library));
        _best = answers.Where(a => a.Candidates.Count > 0).ToDictionary(a => a.Position, a => a.Candidates[0], StringComparer.Ordinal);
        _fits = answers.SelectMany(a => a.Candidates.Where(c => !c.IsLead).Select(c => (library.Positions[a.Position].Family, Candidate: c)))
            .ToLookup(f => f.Candidate.Part, StringComparer.Ordinal);
    }

    internal LookupEntry Of(Position position) => new()
    {
        Type = "position",
        Id = position.Address,
        Title = position.Name,
        Page = PageMap.Of(position),
        Detail = $"{FamilyName(position.Family)}, {_library.Assemblies[$"{position.Family}/{position.Assembly}"].Name}",
        Kind = position.Kind.Name,
        Families = [position.Family],
        Standing = _best.GetValueOrDefault(position.Address)?.Standing,
        Text = Joined(position.Role, position.Note),
    };

    internal LookupEntry Of(Assembly assembly) => new()
    {
        Type = "assembly",
        Id = assembly.Address,
        Title = assembly.Name,
        Page = PageMap.Of(assembly),
        Detail = FamilyName(assembly.Family),
        Families = [assembly.Family],
        Text = Joined(assembly.Note),
    };

    /// <summary>An entry for a record; null for one that nobody looks up or that has no page.</summary>
    internal LookupEntry? Of(IRecord record)
    {
        if (record.Retired || _map.Of(record)?.ToString() is not { } page) return null;
        return record switch
        {
            Part part => OfPart(part, page),
            Family family => OfFamily(family, page),
            Symptom symptom => OfSymptom(symptom, page),
            Machine machine => OfMachine(machine, page),
            Bag bag => OfBag(bag, page),
            Unit unit => OfUnit(unit, page),
            Source source => Entry(record, page, source.Title, Words.Of(source.Kind).Replace('-', ' '), Joined(source.Kept, source.By, source.Note)),
            Note note => Entry(record, page, note.Title, "", note.Markdown),
            Question question => Entry(record, page, question.Asks, question.IsOpen ? "open" : "answered", Joined(question.Answer)),
            Repair repair => OfRepair(repair, page),
            _ => null,
        };
    }

    private LookupEntry OfPart(Part part, string page)
    {
        var fits = _fits[part.Id].ToList();
        var known = SizeBook.Of(part);
        var sizes = part.Kind.Deciding.Take(3).Where(known.ContainsKey).Select(a => _sizes.Of(a, known[a].Size));
        return new LookupEntry
        {
            Type = "part",
            Id = part.Id,
            Title = part.Name,
            Page = page,
            Detail = Joined(", ", [part.CurrentNumber, part.Maker, string.Join(" × ", sizes)]),
            Kind = part.Kind.Name,
            Families = [.. fits.Select(f => f.Family).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            Standing = fits.Count == 0 ? null : Words.Of(fits.Max(f => f.Candidate.Weakest)),
            Numbers = [.. Numbers(part)],
            Aliases = part.Aliases,
            Text = Joined(part.Maker, part.Note),
        };
    }

    private static LookupEntry OfFamily(Family family, string page) =>
        Entry(family, page, family.Name, family.Maker, Joined([.. family.Models.Select(m => m.Name), family.Note])) with { Families = [family.Id] };

    private static LookupEntry OfSymptom(Symptom symptom, string page)
    {
        var text = Joined([.. symptom.Checks, .. symptom.Suspects.Select(s => s.Id), symptom.Note]);
        return Entry(symptom, page, symptom.Name, SymptomPages.SideText(symptom.Where), text);
    }

    private LookupEntry OfUnit(Unit unit, string page)
    {
        var place = House.MachineOf(_library, unit) ?? unit.Bin ?? "idle";
        return Entry(unit, page, $"Unit: {AssemblyName(unit.Assembly.Id)}", $"{FamilyName(unit.Family.Id)}, {place}", Joined(unit.Note)) with
        {
            Families = [unit.Family.Id],
        };
    }

    private static IEnumerable<LookupNumber> Numbers(Part part) =>
    [
        .. part.Numbers.Select(n => new LookupNumber(n.Id, NumberRole.Number)),
        .. part.Also.Select(a => new LookupNumber(a.Number.Id, NumberRole.Also, a.Maker)),
        .. part.EarlierNumbers.Select(n => new LookupNumber(n.Id, NumberRole.Earlier)),
        .. part.Standard is { } standard ? new[] { new LookupNumber(standard, NumberRole.Generic) } : [],
    ];

    private LookupEntry OfMachine(Machine machine, string page) =>
        Entry(machine, page, _library.MachineName(machine.Id), $"{FamilyName(machine.Family.Id)}, {MachineAnswers.Facts(_library, machine)}", Joined(machine.Note)) with
        {
            Families = [machine.Family.Id],
            Numbers = machine.Serial is { } serial ? [new LookupNumber(serial, NumberRole.Id)] : [],
        };

    private LookupEntry OfBag(Bag bag, string page)
    {
        var part = _library.Parts.GetValueOrDefault(bag.Part.Id);
        var left = _house.Left(bag.Id) is > 0 and var count ? $"{count} left" : "used up";
        var detail = Joined(", ", [part?.CurrentNumber, bag.Bin, left]);
        return Entry(bag, page, $"Bag: {part?.Name ?? bag.Part.Id}", detail, Joined(bag.Number, bag.Defect, bag.Note)) with
        {
            Kind = part?.Kind.Name,
        };
    }

    private LookupEntry OfRepair(Repair repair, string page)
    {
        var symptom = repair.Symptom is { } s ? _library.Symptoms.GetValueOrDefault(s.Id)?.Name : null;
        var on = repair.Machine is { } m ? _library.MachineName(m.Id) : repair.Unit?.Id;
        var found = repair.Found.Select(f => $"{_library.Positions.GetValueOrDefault(f.Position.Id)?.Name} {f.Condition}");
        return Entry(repair, page, $"Repair: {symptom ?? on}", Joined(", ", [on, repair.Date.ToString()]), Joined([.. found, repair.Note]));
    }

    private static LookupEntry Entry(IRecord record, string page, string title, string detail, string text) => new()
    {
        Type = Words.Of(record.Type),
        Id = record.Id,
        Title = title,
        Page = page,
        Detail = detail,
        Text = text,
    };

    private string FamilyName(string id) => _library.Families.GetValueOrDefault(id)?.Name ?? id;

    private string AssemblyName(string address) => _library.Assemblies.GetValueOrDefault(address)?.Name ?? address;

    private static string Joined(params IEnumerable<string?> texts) => Joined(" ", texts);

    private static string Joined(string between, IEnumerable<string?> texts) => string.Join(between, texts.Where(t => !string.IsNullOrEmpty(t)));
}
