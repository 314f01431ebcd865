using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Arithmetic;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Browser.Tests.Arithmetic;

/// <summary>What a calculator comes to, as one text: from this process, from its script, from what its page shows.</summary>
internal static class Outcomes
{
    // Fills the page in through its address, presses Enter, and reads what a reader sees.
    private const string ShowEach =
        """
        (async () => {
          const sheet = document.querySelector(".worksheet");
          const all = (selector, text) => [...sheet.querySelectorAll(selector)].filter((e) => !e.closest("[hidden]")).map(text);
          const shown = [];
          for (const texts of it) {
            sheet.querySelector(".clear").click();
            if (Object.keys(texts).length > 0) {
              const arrived = new Promise((resolve) => addEventListener("hashchange", resolve, { once: true }));
              location.hash = new URLSearchParams(texts).toString();
              await arrived;
            }
            sheet.querySelector("form").requestSubmit();
            shown.push([
              ...all(".working tbody tr", (row) => [...row.cells].map((cell) => cell.textContent).join(" | ")),
              ...all(".says:not(.waits)", (answer) => `= ${answer.textContent}`),
              ...all(".safety li", (caution) => `! ${caution.textContent}`),
              ...all(".on-record li", (part) => `? ${part.querySelector("a").href.match(/([^/]+)[.]html$/)[1]} ${part.querySelector(".sub").textContent}`),
              ...all(".problem", (problem) => `${problem.closest(".field").dataset.name} refused: ${problem.textContent}`),
            ].join("\n"));
          }
          return shown;
        })()
        """;

    private const string RunEach =
        """
        it.texts.map((texts) => {
          try {
            const { tables, declared, record } = crossrefCalculatorTables;
            const { working, problems = [] } = crossrefCalculators.run(it.name, declared[it.name], texts, tables, record);
            const found = working?.sought ? crossrefCalculators.find(working.sought, crossrefParts, tables.tolerances) : [];
            const refused = (input) => problems.filter((p) => p.input === input.name).map((p) => p.message).join("; ");
            return [
              ...(working?.lines ?? []).map((line) => `${line.what} | ${line.figure} | ${line.how}`),
              ...(working ? [`= ${working.answer}`] : []),
              ...(working?.cautions ?? []).map((caution) => `! ${caution}`),
              ...found.slice(0, 10).map((f) => `? ${f.part.id} agrees: ${f.agreeing.join(", ")}${f.unknown.length ? `; unknown: ${f.unknown.join(", ")}` : ""}`),
              ...declared[it.name].filter(refused).map((input) => `${input.name} refused: ${refused(input)}`),
            ].join("\n");
          } catch (error) {
            return `threw ${error}`;
          }
        })
        """;

    private const string SeekEach =
        """
        it.texts.map((texts) => {
          const { tables, declared, record } = crossrefCalculatorTables;
          const { number } = crossrefCalculators.tools;
          const { working } = crossrefCalculators.run(it.name, declared[it.name], texts, tables, record);
          if (!working?.sought) return "";
          const size = ([name, size]) => `${name} ${typeof size === "string" ? size : `${number(size.value, 9)} ${number(size.uncertainty, 9)}`}`;
          const found = crossrefCalculators.find(working.sought, it.parts ? JSON.parse(it.parts) : crossrefParts, tables.tolerances);
          return [
            working.sought.kind,
            ...Object.entries(working.sought.sizes).map(size).sort(),
            ...found.map((f) => `? ${f.part.id} agrees: ${f.agreeing.join(", ")}${f.unknown.length ? `; unknown: ${f.unknown.join(", ")}` : ""}`),
          ].join("\n");
        })
        """;

    internal static string Of(Calculator calculator, IReadOnlyDictionary<string, string> texts, OnRecord record, Library library)
    {
        var result = calculator.Run(texts, record);
        var refused = calculator.Inputs.Select(i => (i.Name, Problem: string.Join("; ", result.Problems.Where(p => p.Input == i.Name).Select(p => p.Message))));
        return string.Join('\n',
        [
            .. result.Working?.Lines.Select(l => $"{l.What} | {l.Figure} | {l.How}") ?? [],
            .. result.Working is { } working ? working.Cautions.Select(c => "! " + c).Prepend("= " + working.Answer) : [],
            .. Found(result.Working?.Sought, library).Take(10),
            .. refused.Where(r => r.Problem.Length > 0).Select(r => $"{r.Name} refused: {r.Problem}"),
        ]);
    }

    /// <summary>What a calculator looks for, and every part that it finds.</summary>
    internal static string Sought(Calculator calculator, IReadOnlyDictionary<string, string> texts, OnRecord record, Library library) =>
        calculator.Run(texts, record).Working?.Sought is not { } sought ? "" : string.Join('\n',
        [
            sought.Kind.Name,
            .. sought.Sizes.Select(s => $"{s.Key} {(s.Value.Quantity is { } q ? $"{Figure.Number((double)q.Value, 9)} {Figure.Number((double)q.Uncertainty, 9)}" : s.Value.Text)}").Order(StringComparer.Ordinal),
            .. Found(sought, library),
        ]);

    private static IEnumerable<string> Found(Sought? sought, Library library) => sought is null ? [] : SizeSearch.Find(library, sought)
        .Select(f => $"? {f.Part} agrees: {string.Join(", ", f.Agreeing)}{(f.Unknown.Any() ? "; unknown: " + string.Join(", ", f.Unknown) : "")}");

    /// <summary>What a calculator's script looks for, and what it finds among parts as the site's script lists them; the site's own where none are given.</summary>
    internal static Task<string[]> SoughtAsync(ITab tab, string name, IEnumerable<IReadOnlyDictionary<string, string>> texts, string? parts = null) =>
        tab.AskAsync<string[]>(SeekEach, new { name, texts, parts });

    internal static Task<string[]> ShownAsync(ITab tab, IEnumerable<IReadOnlyDictionary<string, string>> texts) => tab.AskAsync<string[]>(ShowEach, texts);

    internal static Task<string[]> ScriptedAsync(ITab tab, string name, IEnumerable<IReadOnlyDictionary<string, string>> texts) =>
        tab.AskAsync<string[]>(RunEach, new { name, texts });
}
