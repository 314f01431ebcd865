using Crossref.Core.Arithmetic;
using Crossref.Core.Quantities;
using Crossref.Site.Pages.Calculation;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>The trade's arithmetic: an overview and a page a calculator. The form follows from what the calculator asks for.</summary>
internal sealed class CalculatorPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => [Overview(), .. Calculators.All.Select(Page)];

    private Sheet Overview()
    {
        var path = PageMap.Overview("calculators");
        var links = desk.LinksFrom(path);
        var lines = Calculators.All.Select(c => new CalculatorLine(links.Calculator(c), c.Purpose, Questions(c, links)));
        return new Sheet(path, "calculators.html", "Overview", "Calculators", Crumbs.Of(links), new CalculatorsView([.. lines])) { Reference = "calculators" };
    }

    private Sheet Page(Calculator calculator)
    {
        var path = PageMap.Of(calculator);
        var links = desk.LinksFrom(path);
        var view = new CalculatorView(calculator, Questions(calculator, links), [.. calculator.Inputs.GroupBy(i => i.Group, Field).Select(g => new FieldGroup(g.Key, [.. g]))]);
        return new Sheet(path, "calculator.html", "Calculator", calculator.Title, Crumbs.Of(links, links.Overview("calculators", "Calculators")), view)
        {
            Reference = "crossref " + calculator.Name,
            Scripts = ["calculator.js", CalculatorScript.Path, $"calculator-{calculator.Name}.js", .. Parts(calculator), "calculator-form.js"],
        };
    }

    private static IReadOnlyList<string> Parts(Calculator calculator) => calculator.Seeks is { } kind ? ["calculator-parts.js", PartsScript.Path(kind)] : [];

    private static IReadOnlyList<Link> Questions(Calculator calculator, PageLinks links) =>
        [.. BenchQuestions.Of(calculator.Name).Select(q => new Link($"{links.Href(PageMap.Of(calculator))}#{q.State}", q.Question))];

    private FieldView Field(CalculatorInput input)
    {
        var unit = input.Measures is { } dimension ? UnitTable.Symbols(dimension).FirstOrDefault("") : "";
        var isWritten = input.Choices.Count == 0;
        var hint = new[]
        {
            isWritten && input.Example.Length > 0 ? $"Such as {input.Example}." : "",
            isWritten && input.Default.Length > 0 ? $"Left empty, it counts as {$"{input.Default} {unit}".TrimEnd()}." : "",
            input.Help,
        };
        return new FieldView("field-" + input.Name, input, unit, string.Join(' ', hint.Where(t => t.Length > 0)), input.Name == "machine" ? desk.OnRecord.Machines : []);
    }
}
