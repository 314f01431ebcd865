using System.Globalization;
using System.Text;
using Crossref.Site.Pages.Templating;

namespace Crossref.Site.Pages.Drawing;

/// <summary>
/// A section through a round part, its axis lying flat, drawn after the conventions of ISO 128 (thick outline, thin
/// hatching at 45 degrees, long-dashed dotted centre line) and ISO 129 (thin dimension and extension lines, values
/// above the line or left of it, read from below or from the right). Lines take their colours from the style sheet.
/// </summary>
internal sealed class SectionDrawing
{
    private const int Width = 340;
    private const double Margin = 12;
    private const double Axis = 132;
    private const double Left = 96;
    private const double Right = 250;
    private readonly StringBuilder _lines = new();
    private double _top = Axis;
    private double _bottom = Axis;

    /// <summary>A closed outline, by its corners.</summary>
    internal void Outline(params (double X, double Y)[] corners) =>
        _lines.Append(CultureInfo.InvariantCulture, $"<path class=\"outline\" d=\"M{string.Join("L", corners.Select(c => At(c.X, c.Y)))}Z\"/>\n");

    /// <summary>A cut face: outlined and hatched.</summary>
    internal void Cut(double left, double right, double top, double bottom)
    {
        Outline((left, top), (right, top), (right, bottom), (left, bottom));
        // Lines at 45 degrees, clipped to the face by hand so that no id is needed.
        const double step = 7;
        for (var start = left - (bottom - top) + step / 2; start < right; start += step)
        {
            var (x1, y1) = start < left ? (left, bottom - (left - start)) : (start, bottom);
            var rise = Math.Min(right - x1, y1 - top);
            if (rise > 0.5) Line("hatch", x1, y1, x1 + rise, y1 - rise);
        }
    }

    internal void Circle(double x, double y, double radius) =>
        _lines.Append(CultureInfo.InvariantCulture, $"<circle class=\"outline\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"/>\n");

    internal void Line(string kind, double x1, double y1, double x2, double y2) =>
        _lines.Append(CultureInfo.InvariantCulture, $"<path class=\"{kind}\" d=\"M{At(x1, y1)}L{At(x2, y2)}\"/>\n");

    internal void CentreLine(double left, double right, double y) => Line("centre", left, y, right, y);

    /// <summary>A dimension along the axis, above the part.</summary>
    internal void Along(double left, double right, double from, double y, string text)
    {
        Line("thin", left, from - 2, left, y - 4);
        Line("thin", right, from - 2, right, y - 4);
        Arrowed(left, y, right, y, right - left < 24);
        Text((left + right) / 2, y - 4, text, upright: true);
    }

    /// <summary>A diameter, on the left or the right of the part.</summary>
    internal void Across(double top, double bottom, double from, double x, string text)
    {
        var away = x < from ? -1 : 1;
        Line("thin", from + (2 * away), top, x + (4 * away), top);
        Line("thin", from + (2 * away), bottom, x + (4 * away), bottom);
        Arrowed(x, top, x, bottom, bottom - top < 24);
        Text(x - 4, (top + bottom) / 2, text, upright: false);
    }

    /// <summary>The drawing, with words for whoever cannot see it.</summary>
    internal Markup ToMarkup(string words, string foot) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"""
        <figure class="sketch"><svg viewBox="0 {N(_top - Margin)} {Width} {N(_bottom - _top + (2 * Margin))}" role="img" aria-label="{Escape.Html(words)}">
        {_lines}</svg><figcaption>{Escape.Html(foot)}</figcaption></figure>

        """));

    /// <summary>The drawing's own measures for a part of a length and a greatest diameter, as large as the sheet allows.</summary>
    internal static Frame For(double length, double diameter)
    {
        // True to scale unless the part is so long or so flat that its walls would vanish.
        var scale = Math.Min((Right - Left) / length, 150 / diameter);
        var (width, height) = (Math.Max(length * scale, 36), Math.Max(diameter * scale, 48));
        var middle = (Left + Right) / 2;
        return new Frame(middle - (width / 2), middle + (width / 2), Axis, height / diameter);
    }

    /// <summary>Where the part lies.</summary>
    /// <param name="Left">Its left end.</param>
    /// <param name="Right">Its right end.</param>
    /// <param name="Axis">The height of its axis.</param>
    /// <param name="PerMillimetre">How long a millimetre of diameter is.</param>
    internal readonly record struct Frame(double Left, double Right, double Axis, double PerMillimetre)
    {
        internal double Top(double diameter) => Axis - (diameter * PerMillimetre / 2);

        internal double Bottom(double diameter) => Axis + (diameter * PerMillimetre / 2);
    }

    // Arrowheads stand inside where there is room, else they point at the lines from outside.
    private void Arrowed(double x1, double y1, double x2, double y2, bool outside)
    {
        var (dx, dy) = x1 == x2 ? (0.0, 1.0) : (1.0, 0.0);
        var reach = outside ? 12 : 0;
        Line("thin", x1 - (dx * reach), y1 - (dy * reach), x2 + (dx * reach), y2 + (dy * reach));
        var turn = outside ? -1 : 1;
        Head(x1, y1, dx * turn, dy * turn);
        Head(x2, y2, -dx * turn, -dy * turn);
    }

    private void Head(double x, double y, double dx, double dy)
    {
        var (backX, backY, sideX, sideY) = (x + (dx * 9), y + (dy * 9), dy * 1.8, dx * 1.8);
        _lines.Append(CultureInfo.InvariantCulture, $"<path class=\"head\" d=\"M{At(x, y)}L{At(backX - sideX, backY + sideY)}L{At(backX + sideX, backY - sideY)}Z\"/>\n");
    }

    private void Text(double x, double y, string text, bool upright) => _lines.Append(
        CultureInfo.InvariantCulture,
        $"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"middle\"{(upright ? "" : $" transform=\"rotate(-90 {N(x)} {N(y)})\"")}>{Escape.Html(text)}</text>\n");

    private string At(double x, double y)
    {
        (_top, _bottom) = (Math.Min(_top, y), Math.Max(_bottom, y));
        return N(x) + " " + N(y);
    }

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
