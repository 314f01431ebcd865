using System.Globalization;
using System.Text;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Drawing;

/// <summary>
/// A path of evidence as a small figure: the place on top, then part by part, each line named by what it rests on.
/// A line that is only a lead is dashed, after the line types of ISO 128. It stands upright, so that it fits a phone.
/// </summary>
internal static class PathFigure
{
    private const int Width = 340;
    private const int Box = 32;
    private const int Gap = 38;
    private const int Stem = 26;

    // Longer texts would run out of the figure; the words beside it are whole.
    private const int MostLetters = 42;

    /// <summary>The figure; null for a path of one step, which a sentence tells as well.</summary>
    internal static Markup? Of(Library library, Candidate candidate)
    {
        if (candidate.Steps.Count < 2) return null;
        var drawing = new StringBuilder();
        Node(drawing, 0, library.Positions[candidate.Steps[0].From].Name, null);
        var y = 0;
        foreach (var step in candidate.Steps)
        {
            Line(drawing, y + Box, step, library);
            y += Box + Gap;
            var part = library.Parts.GetValueOrDefault(step.To);
            Node(drawing, y, part?.CurrentNumber ?? step.To, part?.Name);
        }
        return new Markup(string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <figure class="sketch route"><svg viewBox="-1 -1 {Width + 2} {y + Box + 2}" role="img" aria-label="{Escape.Html(candidate.Reason)}">
            {drawing}</svg></figure>

            """));
    }

    private static void Node(StringBuilder drawing, int y, string text, string? name)
    {
        drawing.Append(CultureInfo.InvariantCulture, $"<path class=\"outline\" d=\"M0 {y}H{Width}V{y + Box}H0Z\"/>\n");
        drawing.Append(CultureInfo.InvariantCulture, $"<text x=\"10\" y=\"{y + 21}\">{Escape.Html(Short(text, MostLetters))}");
        var room = MostLetters - text.Length - 2;
        if (name is not null) drawing.Append(CultureInfo.InvariantCulture, $"<tspan class=\"name\" dx=\"10\">{Escape.Html(room > 8 ? Short(name, room) : "")}</tspan>");
        drawing.Append("</text>\n");
    }

    private static void Line(StringBuilder drawing, int y, PathStep step, Library library)
    {
        var look = step.Kind is StepKind.SamePosition or StepKind.SameSize ? "thin dashed" : "thin";
        drawing.Append(CultureInfo.InvariantCulture, $"<path class=\"{look}\" d=\"M{Stem} {y}V{y + Gap - 8}\"/>\n");
        drawing.Append(CultureInfo.InvariantCulture, $"<path class=\"head\" d=\"M{Stem} {y + Gap}L{Stem - 4} {y + Gap - 10}H{Stem + 4}Z\"/>\n");
        drawing.Append(CultureInfo.InvariantCulture, $"<text class=\"name\" x=\"{Stem + 12}\" y=\"{y + 23}\">{Escape.Html($"{What(step, library)}: {Words.Of(step.Standing)}")}</text>\n");
    }

    private static string What(PathStep step, Library library) => step.Kind switch
    {
        StepKind.Listed => "the maker's list names",
        StepKind.Claim => "was put in here",
        StepKind.Substitution => "for this may stand in",
        StepKind.Superseded => "the maker now sends",
        StepKind.SameSize => "every deciding size agrees",
        _ => $"both stand at {Short(library.Positions[step.Via!].Name, MostLetters - 16)}",
    };

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 1)].TrimEnd() + "…";
}
