using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>
/// The form for a finding: which fields there are and in which order, and the record that they give. The page and the
/// command fill in the same form and write the same text; <c>tests/Recording</c> holds examples.
/// </summary>
public static class ClaimForm
{
    private const string Only = "only-";
    private static readonly string[] NotAsked = ["claim", "date", "pictures", "retired"];
    private static readonly MapShape OnlyIf = ShopShapes.Claim.Find("only-if")!.Value.Map!;

    /// <summary>The fields, in the order in which the record holds them.</summary>
    public static IReadOnlyList<RecordField> Fields { get; } =
    [
        .. ShopShapes.Claim.Keys.Where(k => !NotAsked.Contains(k.Name)).SelectMany(k =>
            k.Value.Map == OnlyIf ? OnlyIf.Keys.Select(o => Field(Only + o.Name, o)) : [Field(k.Name, k)]),
    ];

    /// <summary>The claim without its id, out of the fields that were filled in.</summary>
    internal static MapNode Body(IReadOnlyDictionary<string, string> fields, DateOnly date)
    {
        var (form, only) = (new MapForm(), new MapForm());
        foreach (var field in Fields)
        {
            var text = fields.GetValueOrDefault(field.Name);
            if (field.Name == "orientation") form.AddPairs(field.Name, text);
            else if (field.Name == "only-models") only.AddList("models", Pieces(text));
            else if (field.Name.StartsWith(Only, StringComparison.Ordinal)) only.Add(field.Name[Only.Length..], text);
            else form.Add(field.Name, text);
        }
        return form.Add("only-if", only).Add("date", Day(date)).InOrderOf(ShopShapes.Claim);
    }

    internal static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static string[] Pieces(string? text) => text?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];

    private static RecordField Field(string name, KeyShape key) => new(name, key.Says, key.Value.Kind switch
    {
        ValueKind.Word => key.Value.Words,
        ValueKind.TrueFalse => ["true"],
        _ => [],
    });
}
