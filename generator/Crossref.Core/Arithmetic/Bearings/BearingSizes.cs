using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>What a bearing's number says, in the attributes that parts have under <c>size</c>.</summary>
public static class BearingSizes
{
    /// <summary>
    /// bore, outside, width as lengths; flange (<c>none</c>, or its outside diameter), shields and clearance as words. What
    /// the number leaves open is not there. The clearance is CN when the number marks none; see
    /// <see cref="BearingDesignation.ClearanceWritten"/>. Grease is in no number.
    /// </summary>
    public static IReadOnlyDictionary<string, Size> Of(BearingDesignation bearing)
    {
        var sizes = new Dictionary<string, Size>(StringComparer.Ordinal) { ["bore"] = Length(bearing.Bore), ["outside"] = Length(bearing.Outside) };
        if (bearing.Width is { } width) sizes["width"] = Length(width);
        if (!bearing.Flanged) sizes["flange"] = new Size("none", null);
        else if (bearing.FlangeOutside is { } flange) sizes["flange"] = new Size(Text(flange), null);
        if (bearing.Shields is { } shields) sizes["shields"] = new Size(shields, null);
        if (bearing.Clearance is { } clearance) sizes["clearance"] = new Size(clearance, null);
        return sizes;
    }

    private static Size Length(decimal millimetres) => new(Text(millimetres), new Quantity(millimetres, 0, Dimension.Length));

    private static string Text(decimal millimetres) => Figure.Number((double)millimetres, 3);
}
