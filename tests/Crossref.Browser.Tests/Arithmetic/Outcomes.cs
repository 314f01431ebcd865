using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Arithmetic;

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
            const refused = (input) => problems.filter((p) => p.input === input.name).map((p) => p.message).join("; ");
            return [
              ...(working?.lines ?? []).map((line) => `${line.what} | ${line.figure} | ${line.how}`),
              ...(working ? [`= ${working.answer}`] : []),
              ...(working?.cautions ?? []).map((caution) => `! ${caution}`),
              ...declared[it.name].filter(refused).map((input) => `${input.name} refused: ${refused(input)}`),
            ].join("\n");
          } catch (error) {
            return `threw ${error}`;
          }
        })
        """;

    internal static string Of(Calculator calculator, IReadOnlyDictionary<string, string> texts, OnRecord record)
    {
        var result = calculator.Run(texts, record);
        var refused = calculator.Inputs.Select(i => (i.Name, Problem: string.Join("; ", result.Problems.Where(p => p.Input == i.Name).Select(p => p.Message))));
        return string.Join('\n',
        [
            .. result.Working?.Lines.Select(l => $"{l.What} | {l.Figure} | {l.How}") ?? [],
            .. result.Working is { } working ? working.Cautions.Select(c => "! " + c).Prepend("= " + working.Answer) : [],
            .. refused.Where(r => r.Problem.Length > 0).Select(r => $"{r.Name} refused: {r.Problem}"),
        ]);
    }

    internal static Task<string[]> ShownAsync(ITab tab, IEnumerable<IReadOnlyDictionary<string, string>> texts) => tab.AskAsync<string[]>(ShowEach, texts);

    internal static Task<string[]> ScriptedAsync(ITab tab, string name, IEnumerable<IReadOnlyDictionary<string, string>> texts) =>
        tab.AskAsync<string[]>(RunEach, new { name, texts });
}
