using System.Globalization;

namespace Crossref.Cli.Asking;

/// <summary>Asks questions and reads the answers, a line each.</summary>
internal sealed class Talk(TextReader input, TextWriter output)
{
    private const int MostShown = 20;
    private const string BackWord = "back";

    internal void Say(string text) => output.WriteLine(text);

    /// <summary>Asks until there is an answer that will do.</summary>
    internal Reply Ask(Question question)
    {
        var (offers, usual) = (question.Offers, question.Default);
        var shown = offers;
        output.WriteLine();
        if (question.Remark is { } remark) output.WriteLine(remark + "\n");
        output.WriteLine(question.Text);
        while (true)
        {
            Show(shown, question.Without);
            if (Line(offers.FirstOrDefault(o => o.Value == usual)?.Name ?? usual) is not { } line) return new Reply(ReplyKind.End);
            if (line == BackWord || (line.Length == 0 && usual is null)) return new Reply(ReplyKind.Back);
            if (line.Length == 0) return new Reply(ReplyKind.Answer, usual == Question.None ? null : usual);
            if (line == Question.None && question.Without is not null) return new Reply(ReplyKind.Answer);
            if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Math.Min(shown.Count, MostShown))
                return new Reply(ReplyKind.Answer, shown[number - 1].Value);
            try
            {
                return new Reply(ReplyKind.Answer, question.Read(line));
            }
            catch (CannotRunException e)
            {
                var near = offers.Where(o => Has(o.Name, line) || Has(o.Value, line) || Has(o.Label, line)).ToList();
                shown = near.Count > 0 ? near : offers;
                output.WriteLine(near.Count > 0 ? "Which of these?" : $"{e.Message} {e.Hint}");
            }
        }
    }

    /// <summary>The last question: an answer for yes, which Enter means too.</summary>
    internal ReplyKind Confirm(string text)
    {
        output.WriteLine();
        output.WriteLine(text);
        while (true)
        {
            switch (Line("yes")?.ToLowerInvariant())
            {
                case "" or "y" or "yes": return ReplyKind.Answer;
                case null or "n" or "no": return ReplyKind.End;
                case BackWord: return ReplyKind.Back;
                default: output.WriteLine("Type yes, no, or back to change an answer."); break;
            }
        }
    }

    private string? Line(string? usual)
    {
        output.Write(usual is null ? "> " : $"[{usual}] > ");
        output.Flush();
        return input.ReadLine()?.Trim();
    }

    private void Show(IReadOnlyList<Choice> shown, string? without)
    {
        var wide = shown.Take(MostShown).Select(c => c.Name.Length).DefaultIfEmpty(0).Max();
        for (var i = 0; i < Math.Min(shown.Count, MostShown); i++)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1,4}  {shown[i].Name.PadRight(wide)}  {shown[i].Label}").TrimEnd());
        if (shown.Count > MostShown) output.WriteLine($"      ... and {shown.Count - MostShown} more; type a piece of it.");
        if (without is not null) output.WriteLine("   -  " + without);
    }

    private static bool Has(string text, string piece) => text.Contains(piece, StringComparison.OrdinalIgnoreCase);
}
