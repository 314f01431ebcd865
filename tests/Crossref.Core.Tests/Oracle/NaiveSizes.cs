using System.Globalization;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>
/// The rules of sizes read word by word, for the kinds and values that the random libraries hold. Tolerances and
/// dimensions are typed here once more: ISO 492 class Normal, ISO 286-1 grade IT9, ISO 2768-1 class m, and the trade's own.
/// </summary>
internal sealed class NaiveSizes(Func<Mutation, bool> believes)
{
    /// <summary>"Each kind names its deciding attributes"</summary>
    private static readonly Dictionary<string, string[]> Deciding = new()
    {
        ["bearing"] = ["bore", "outside", "width", "flange", "shields", "clearance", "grease-temp"],
        ["gear"] = ["module", "teeth", "face", "helix", "hand", "pressure-angle", "bore"],
        ["spring"] = ["free-length", "rate", "wire"],
        ["lamp"] = ["volts", "watts", "lit-length", "overall-length", "ends"],
    };

    /// <summary>"and those that must match"</summary>
    private static readonly Dictionary<string, string[]> Must = new()
    {
        ["bearing"] = ["bore"],
        ["gear"] = ["module", "helix", "hand"],
        ["lamp"] = ["volts", "ends"],
    };

    /// <summary>ISO 15 dimensions of the designations in use here.</summary>
    private static readonly Dictionary<string, string[]> Designations = new()
    {
        ["6001-2RS"] = ["12", "28", "8", "none", "2RS", "CN"],
        ["6901ZZ"] = ["12", "24", "6", "none", "2Z", "CN"],
        ["6002/C3"] = ["15", "32", "9", "none", "open", "C3"],
    };

    /// <summary>"P and Q, of one kind with at least one deciding attribute, have all of them known and in agreement"</summary>
    internal bool Same(Part p, Part q)
    {
        if (p.Kind != q.Kind) return false;
        if (!Deciding.TryGetValue(q.Kind.Name, out var attributes)) return believes(Mutation.SameSizeOfKindsWithoutSizes);
        if (believes(Mutation.SameSizeOfMustMatchOnly)) attributes = Must.GetValueOrDefault(q.Kind.Name) ?? attributes;
        return attributes.All(a => Agree(q.Kind.Name, a, p, q) ?? believes(Mutation.UnknownSizesAgree));
    }

    /// <summary>"A must-match attribute known to differ from every part listed at X … unknown values, or nothing listed, rule nothing out."</summary>
    internal bool RuledOut(Part part, List<Part> listed)
    {
        if (listed.Count == 0 || believes(Mutation.MustMatchDoesNothing)) return false;
        var attributes = Must.GetValueOrDefault(part.Kind.Name) ?? [];
        if (believes(Mutation.EveryDecidingMustMatch)) attributes = Deciding.GetValueOrDefault(part.Kind.Name) ?? [];
        bool Differs(string a, Part l) => Agree(part.Kind.Name, a, part, l) is { } agree ? !agree : believes(Mutation.UnknownSizesDiffer);
        return attributes.Any(a => believes(Mutation.MustMatchAnyListed) ? listed.Any(l => Differs(a, l)) : listed.All(l => Differs(a, l)));
    }

    // "Two known values agree when they differ by no more than the larger of their uncertainties combined (root sum of
    // squares) and the attribute's working tolerance"
    private bool? Agree(string kind, string attribute, Part one, Part other)
    {
        if (Known(one, attribute) is not { } a || Known(other, attribute) is not { } b) return null;
        if (a.Quantity is not { } x || b.Quantity is not { } y) return Word(a.Text) == Word(b.Text);
        var (u, v) = ((double)x.Uncertainty, (double)y.Uncertainty);
        var measuring = believes(Mutation.UncertaintiesAddUp) ? u + v : Math.Sqrt((u * u) + (v * v));
        if (believes(Mutation.UncertaintyIsIgnored)) measuring = 0;
        var working = believes(Mutation.ToleranceIsIgnored) ? 0 : Tolerance(kind, attribute, (double)Math.Max(x.Value, y.Value));
        var allowed = believes(Mutation.UncertaintyAndToleranceAddUp) ? measuring + working
            : believes(Mutation.SmallerOfUncertaintyAndTolerance) ? Math.Min(measuring, working) : Math.Max(measuring, working);
        return (double)Math.Abs(x.Value - y.Value) <= allowed + 1e-9;
    }

    // "Generic designation: sizes follow from ISO 15"; what is typed goes first.
    private Size? Known(Part part, string attribute)
    {
        var typed = part.Sizes.GetValueOrDefault(attribute);
        if (believes(Mutation.DesignationSaysNothing)) return typed;
        Size? said = null;
        if (part.Kind.Name == "bearing" && part.Standard is { } standard && Designations.TryGetValue(standard, out var values))
        {
            var at = Array.IndexOf(Deciding["bearing"], attribute);
            if (at is >= 0 and < 3) said = new Size(values[at], new Quantity(decimal.Parse(values[at], CultureInfo.InvariantCulture), 0, Dimension.Length));
            else if (at is >= 3 and < 6) said = new Size(values[at], null);
        }
        return believes(Mutation.DesignationBeatsTyped) ? said ?? typed : typed ?? said;
    }

    private string Word(string text) => text == "ZZ" && !believes(Mutation.ShieldsByTheLetter) ? "2Z" : text;

    private static double Tolerance(string kind, string attribute, double value) => (kind, attribute) switch
    {
        // ISO 492, class Normal: bore 10 to 18 mm 0/-8 µm; outside 18 to 30 mm 0/-9 µm, 30 to 50 mm 0/-11 µm; width of bores 10 to 30 mm 0/-120 µm.
        ("bearing", "bore") => 0.008,
        ("bearing", "outside") => value <= 30 ? 0.009 : 0.011,
        ("bearing", "width") => 0.12,
        ("bearing", "grease-temp") => 5,
        // ISO 286-1: IT9 is 36 µm for 6 to 10 mm.
        ("gear", "bore") => 0.036,
        ("gear", "module") => 0.003 * value,
        ("gear", "helix" or "pressure-angle") => 0.1,
        ("spring", "wire") => 0.02 * value,
        ("spring", "rate") or ("lamp", "watts") => 0.05 * value,
        // ISO 2768-1, class m: 0.2 mm for 6 to 30 mm, 0.3 for 30 to 120, 0.5 for 120 to 400.
        (_, "face" or "free-length" or "lit-length" or "overall-length") => value <= 30 ? 0.2 : value <= 120 ? 0.3 : 0.5,
        _ => 0,
    };
}
