using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Drawing;

/// <summary>
/// Dimensioned sketches of parts, from the sizes on record: enough to hold a caliper to the right place. A part whose
/// sizes do not suffice has none.
/// </summary>
internal static class Sketches
{
    // Bearings: share of the ring's height that is ring, not ball. For the eye only.
    private const double RingShare = 0.28;

    internal static Markup? Of(Part part, SizeText text) => part.Kind.Name switch
    {
        "bearing" => Bearing(part, text),
        "sleeve" => Tube(part, text, "length"),
        "roller" => Roller(part, text),
        "gear" => Gear(part, text),
        "lamp" => Lamp(part, text),
        _ => null,
    };

    private static Markup? Bearing(Part part, SizeText text)
    {
        if (Values(part, "bore", "outside", "width") is not [var bore, var outside, var width] || bore >= outside) return null;
        var drawing = new SectionDrawing();
        var at = SectionDrawing.For(width, outside);
        var ring = (outside - bore) / 2 * RingShare * at.PerMillimetre;
        var ball = ((outside - bore) / 2 * at.PerMillimetre - (2 * ring)) / 2;
        var flanged = part.Sizes.TryGetValue("flange", out var flange) && flange.Text is not ("none" or "no");
        foreach (var (top, bottom) in new[] { (at.Top(outside), at.Top(bore)), (at.Bottom(bore), at.Bottom(outside)) })
        {
            drawing.Cut(at.Left, at.Right, top, top + ring);
            drawing.Cut(at.Left, at.Right, bottom - ring, bottom);
            drawing.Circle((at.Left + at.Right) / 2, (top + bottom) / 2, Math.Min(ball, (at.Right - at.Left) / 2 - 1));
        }
        if (flanged)
        {
            drawing.Outline((at.Left, at.Top(outside)), (at.Left, at.Top(outside) - 7), (at.Left + 6, at.Top(outside) - 7), (at.Left + 6, at.Top(outside)));
            drawing.Outline((at.Left, at.Bottom(outside)), (at.Left, at.Bottom(outside) + 7), (at.Left + 6, at.Bottom(outside) + 7), (at.Left + 6, at.Bottom(outside)));
        }
        Bored(drawing, at, bore, outside, text);
        drawing.Along(at.Left, at.Right, at.Top(outside), at.Top(outside) - 22, text.Bare(Exact(part, "width")));
        return Finish(drawing, part, text, "Section through a bearing", "bore", "outside", "width");
    }

    private static Markup? Tube(Part part, SizeText text, string along)
    {
        if (Values(part, "bore", "outside", along) is not [var bore, var outside, var length] || bore >= outside) return null;
        var drawing = new SectionDrawing();
        var at = SectionDrawing.For(length, outside);
        Wall(drawing, at, bore, outside);
        Bored(drawing, at, bore, outside, text);
        drawing.Along(at.Left, at.Right, at.Top(outside), at.Top(outside) - 22, text.Bare(Exact(part, along)));
        return Finish(drawing, part, text, "Section through a sleeve", "bore", "outside", along);
    }

    private static Markup? Gear(Part part, SizeText text)
    {
        if (Values(part, "module", "teeth", "face", "bore") is not [var module, var teeth, var face, var bore]) return null;
        var helix = Values(part, "helix") is [var angle] && angle < 60 ? angle : 0;
        var pitch = module * teeth / Math.Cos(helix * Math.PI / 180);
        var outside = pitch + (2 * module);
        if (bore >= pitch - (2.5 * module)) return null;
        var drawing = new SectionDrawing();
        var at = SectionDrawing.For(face, outside);
        var root = pitch - (2.5 * module);
        foreach (var (tip, foot, hole) in new[] { (at.Top(outside), at.Top(root), at.Top(bore)), (at.Bottom(outside), at.Bottom(root), at.Bottom(bore)) })
        {
            // Teeth are not hatched in a section.
            drawing.Outline((at.Left, tip), (at.Right, tip), (at.Right, foot), (at.Left, foot));
            drawing.Cut(at.Left, at.Right, Math.Min(foot, hole), Math.Max(foot, hole));
        }
        drawing.CentreLine(at.Left - 8, at.Right + 8, at.Top(pitch));
        drawing.CentreLine(at.Left - 8, at.Right + 8, at.Bottom(pitch));
        drawing.CentreLine(at.Left - 14, at.Right + 14, at.Axis);
        drawing.Line("outline", at.Left, at.Top(bore), at.Left, at.Bottom(bore));
        drawing.Line("outline", at.Right, at.Top(bore), at.Right, at.Bottom(bore));
        drawing.Across(at.Top(bore), at.Bottom(bore), at.Left, at.Left - 34, "⌀" + text.Bare(Exact(part, "bore")));
        drawing.Along(at.Left, at.Right, at.Top(outside), at.Top(outside) - 22, text.Bare(Exact(part, "face")));
        return Finish(drawing, part, text, "Section through a gear", "bore", "face");
    }

    private static Markup? Roller(Part part, SizeText text)
    {
        if (Values(part, "outside", "length") is not [var outside, var length]) return null;
        var drawing = new SectionDrawing();
        var at = SectionDrawing.For(length, outside);
        drawing.Outline((at.Left, at.Top(outside)), (at.Right, at.Top(outside)), (at.Right, at.Bottom(outside)), (at.Left, at.Bottom(outside)));
        if (Values(part, "journal") is [var journal] && journal < outside)
        {
            drawing.Outline((at.Left - 16, at.Top(journal)), (at.Left, at.Top(journal)), (at.Left, at.Bottom(journal)), (at.Left - 16, at.Bottom(journal)));
            drawing.Outline((at.Right, at.Top(journal)), (at.Right + 16, at.Top(journal)), (at.Right + 16, at.Bottom(journal)), (at.Right, at.Bottom(journal)));
            drawing.Across(at.Top(journal), at.Bottom(journal), at.Left - 16, at.Left - 42, "⌀" + text.Bare(Exact(part, "journal")));
        }
        drawing.CentreLine(at.Left - 26, at.Right + 26, at.Axis);
        drawing.Across(at.Top(outside), at.Bottom(outside), at.Right, at.Right + 48, "⌀" + text.Bare(Exact(part, "outside")));
        drawing.Along(at.Left, at.Right, at.Top(outside), at.Top(outside) - 22, text.Bare(Exact(part, "length")));
        return Finish(drawing, part, text, "A roller from the side", "outside", "length", "journal");
    }

    private static Markup? Lamp(Part part, SizeText text)
    {
        if (Values(part, "lit-length", "overall-length") is not [var lit, var overall] || lit >= overall) return null;
        var drawing = new SectionDrawing();
        var at = SectionDrawing.For(overall, overall / 12);
        var side = (at.Right - at.Left) * (1 - (lit / overall)) / 2;
        var (top, bottom) = (at.Axis - 10, at.Axis + 10);
        drawing.Outline((at.Left + 8, top), (at.Right - 8, top), (at.Right - 8, bottom), (at.Left + 8, bottom));
        drawing.Outline((at.Left, at.Axis - 5), (at.Left + 8, at.Axis - 5), (at.Left + 8, at.Axis + 5), (at.Left, at.Axis + 5));
        drawing.Outline((at.Right - 8, at.Axis - 5), (at.Right, at.Axis - 5), (at.Right, at.Axis + 5), (at.Right - 8, at.Axis + 5));
        var turns = Math.Max((int)((at.Right - at.Left - (2 * side)) / 6), 1);
        var turn = (at.Right - at.Left - (2 * side)) / turns;
        for (var i = 0; i < turns; i++)
        {
            var start = at.Left + side + (i * turn);
            drawing.Line("thin", start, at.Axis + 4, start + (turn / 2), at.Axis - 4);
            drawing.Line("thin", start + (turn / 2), at.Axis - 4, start + turn, at.Axis + 4);
        }
        drawing.Along(at.Left + side, at.Right - side, top, top - 22, text.Bare(Exact(part, "lit-length")));
        drawing.Along(at.Left, at.Right, top, top - 48, text.Bare(Exact(part, "overall-length")));
        return Finish(drawing, part, text, "A lamp from the side", "lit-length", "overall-length");
    }

    private static void Wall(SectionDrawing drawing, SectionDrawing.Frame at, double bore, double outside)
    {
        drawing.Cut(at.Left, at.Right, at.Top(outside), at.Top(bore));
        drawing.Cut(at.Left, at.Right, at.Bottom(bore), at.Bottom(outside));
    }

    private static void Bored(SectionDrawing drawing, SectionDrawing.Frame at, double bore, double outside, SizeText text)
    {
        drawing.Line("outline", at.Left, at.Top(bore), at.Left, at.Bottom(bore));
        drawing.Line("outline", at.Right, at.Top(bore), at.Right, at.Bottom(bore));
        drawing.CentreLine(at.Left - 14, at.Right + 14, at.Axis);
        drawing.Across(at.Top(bore), at.Bottom(bore), at.Left, at.Left - 34, "⌀" + text.Bare((decimal)bore));
        drawing.Across(at.Top(outside), at.Bottom(outside), at.Right, at.Right + 40, "⌀" + text.Bare((decimal)outside));
    }

    private static Markup Finish(SectionDrawing drawing, Part part, SizeText text, string what, params string[] shown)
    {
        var sizes = shown.Where(part.Sizes.ContainsKey).Select(a => $"{SizeText.NameOf(a)} {text.Of(a, part.Sizes[a])}");
        return drawing.ToMarkup($"{what}: {string.Join(", ", sizes)}.", $"Sizes in {text.Unit}. A sketch, not to scale.");
    }

    // All of the values, or nothing.
    private static double[] Values(Part part, params string[] attributes)
    {
        var values = attributes.Select(a => part.Sizes.GetValueOrDefault(a)?.Quantity?.Value).ToList();
        return values.TrueForAll(v => v > 0) || (attributes is ["helix"] && values[0] is not null) ? [.. values.Select(v => (double)v!.Value)] : [];
    }

    private static decimal Exact(Part part, string attribute) => part.Sizes[attribute].Quantity!.Value.Value;
}
