using Crossref.Core.Arithmetic;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>
/// Links as one page needs them. All are relative, because a folder that is opened from a disk has no root.
/// A reference to something without a page becomes plain text.
/// </summary>
internal sealed class PageLinks(Library library, PageMap map, string from)
{
    /// <summary>From this page to the site's root: empty, or one or more <c>../</c>.</summary>
    internal string Root { get; } = string.Concat(Enumerable.Repeat("../", from.Count(c => c == '/')));

    internal string Href(PagePlace place) => place.Path == from && place.Fragment is { } id ? "#" + id : Root + place;

    internal string Href(string path) => Root + path;

    internal Link Overview(string name, string text) => new(Href(PageMap.Overview(name)), text);

    internal Link Calculator(Calculator calculator) => new(Href(PageMap.Of(calculator)), calculator.Title);

    internal Link Kind(PartKind kind) => new(Href(PageMap.Kind(kind)), kind.Plural);

    /// <summary>A part by the number one asks for.</summary>
    internal Link Part(string id) => library.Parts.TryGetValue(id, out var part) ? To(part, part.CurrentNumber, "no") : new Link(null, id, "no");

    internal Link Position(string address) => Position(address, library.Positions.GetValueOrDefault(address)?.Name ?? address);

    internal Link Position(string address, string text) =>
        new(library.Positions.TryGetValue(address, out var position) ? Href(PageMap.Of(position)) : null, text);

    internal Link Assembly(string address) => library.Assemblies.TryGetValue(address, out var assembly)
        ? new Link(Href(PageMap.Of(assembly)), assembly.Name)
        : new Link(null, address);

    internal Link Family(string id) => library.Families.TryGetValue(id, out var family) ? To(family, family.Name) : new Link(null, id);

    internal Link Machine(string id) => library.Machines.TryGetValue(id, out var machine) ? To(machine, library.MachineName(id)) : new Link(null, id);

    /// <summary>Anything by its id or, for a position or assembly, by its address.</summary>
    internal Link Record(string id) => library.Records.GetValueOrDefault(id) switch
    {
        Part part => Part(part.Id),
        Family family => To(family, family.Name),
        Machine machine => To(machine, library.MachineName(id)),
        Source source => To(source, source.Title),
        Symptom symptom => To(symptom, symptom.Name),
        Note note => To(note, note.Title),
        Question question => To(question, question.Asks),
        { } other => To(other, id),
        null when library.Positions.ContainsKey(id) => Position(id),
        null when RepairBehind(id) is { } repair => To(repair, id),
        null => Assembly(id),
    };

    // What a repair shows is addressed as repair/position.
    private Repair? RepairBehind(string id) => library.Repairs.GetValueOrDefault(id.Split('/')[0]);

    private Link To(IRecord record, string text, string? style = null) =>
        new(map.Of(record) is { } place ? Href(place) : null, text, style);
}
