using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>What is on record about a part itself.</summary>
internal static class PartFacts
{
    /// <summary>Every number it goes by, the current one first.</summary>
    internal static IEnumerable<NumberRow> Numbers(Part part, PageLinks links)
    {
        var source = part.Source is { } s ? links.Record(s.Id) : null;
        for (var i = 0; i < part.Numbers.Count; i++)
            yield return new NumberRow(part.Numbers[i].Id, i == 0 ? "current, ask for this one" : "also moulded or printed on it", source);
        foreach (var number in part.EarlierNumbers) yield return new NumberRow(number.Id, "earlier number of the same part", source);
        foreach (var also in part.Also)
            yield return new NumberRow(also.Number.Id, $"number of {also.Maker} for the same part", also.Source is { } read ? links.Record(read.Id) : null);
        if (part.Standard is { } standard) yield return new NumberRow(standard, "general designation", null);
    }

    /// <summary>Sizes that decide first, known or not, then the others.</summary>
    internal static IEnumerable<SizeLine> Sizes(Part part, SizeText text)
    {
        var sizes = SizeBook.Of(part);
        foreach (var attribute in part.Kind.Deciding)
        {
            var role = part.Kind.MustMatch.Contains(attribute) ? "must match" : "decides";
            if (!sizes.TryGetValue(attribute, out var size)) yield return new SizeLine(SizeText.NameOf(attribute), "unknown", "", false, role, "");
            else yield return Line(part, attribute, size, role, text);
        }
        foreach (var (attribute, size) in sizes.OrderBy(s => s.Key, StringComparer.Ordinal))
            if (!part.Kind.Deciding.Contains(attribute)) yield return Line(part, attribute, size, "", text);
    }

    /// <summary>Hand, life, supersession and the like.</summary>
    internal static IEnumerable<Pair> Of(Part part, PageLinks links)
    {
        yield return new Pair("Kind", links.Kind(part.Kind) with { Text = CandidateViews.KindWord(part.Kind) });
        yield return new Pair("Maker", part.Maker ?? "not on record");
        if (part.SupersededBy is { } next) yield return new Pair("Superseded", Phrase.Of("the maker now sends ", links.Part(next.Id)));
        if (part.Handed) yield return new Pair("Handed", "which way round matters");
        if (part.Hand is { } hand) yield return new Pair("Hand", part.Mirror is { } mirror ? Phrase.Of(hand + ", its mirror is ", links.Part(mirror.Id)) : hand);
        yield return new Pair("Normal life", part.Life?.ToString() ?? "not on record");
        if (part.Aliases.Count > 0) yield return new Pair("People say", string.Join(", ", part.Aliases));
        if (part.Source is { } source) yield return new Pair("Read in", links.Record(source.Id));
    }

    private static SizeLine Line(Part part, string attribute, KnownSize known, string role, SizeText text)
    {
        var (value, unit) = text.Split(attribute, known.Size);
        return new SizeLine(SizeText.NameOf(attribute), value, unit, true, role, From(part, attribute, known, text));
    }

    private static string From(Part part, string attribute, KnownSize known, SizeText text)
    {
        if (known.Origin == SizeOrigin.Designation) return "by its designation";
        return SizeBook.Contradictions(part).FirstOrDefault(c => c.Attribute == attribute) is { } found
            ? $"{part.Standard} would be {text.Of(attribute, found.Other!.Value.Size)}" : "";
    }
}
