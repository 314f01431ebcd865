using System.Globalization;

namespace Crossref.Cli.Asking;

/// <summary>Asks questions and reads the answers, a line each.</summary>
internal sealed class Talk(TextReader input, TextWriter output)
{
    private const int MostShown = 20;

    internal void Say(string text) => output.WriteLine(text);

    /// <summary>Asks until there is an answer that will do.</summary>
    internal Reply Ask(Question question, IReadOnlyDictionary<string, string> answers)
    {
        var (offers, usual) = (question.Offers(answers), question.Default(answers));
        var shown = offers;
        output.WriteLine();
        output.WriteLine(question.Text);
        while (true)
        {
            Show(shown, question.Optional);
            if (Line(usual) is not { } line) return new Reply(ReplyKind.End);
            if (line.Length == 0) return usual is null ? new Reply(ReplyKind.Back) : new Reply(ReplyKind.Answer, usual);
            if (line == "-" && question.Optional) return new Reply(ReplyKind.Answer);
            if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Math.Min(shown.Count, MostShown))
                return new Reply(ReplyKind.Answer, shown[number - 1].Value);
            try
            {
                return new Reply(ReplyKind.Answer, question.Read(line, answers));
            }
            catch (CannotRunException e)
            {
                var near = offers.Where(o => Has(o.Value, line) || Has(o.Label, line)).ToList();
                shown = near.Count > 0 ? near : offers;
                output.WriteLine(near.Count > 0 ? "Which of these?" : $"{e.Message} {e.Hint}");
            }
        }
    }

    /// <summary>Whether the answer to a last question is yes, which Enter means too.</summary>
    internal bool Confirm(string text)
    {
        output.WriteLine();
        output.WriteLine(text);
        while (true)
        {
            switch (Line("yes")?.ToLowerInvariant())
            {
                case "" or "y" or "yes": return true;
                case null or "n" or "no": return false;
                default: output.WriteLine("Type yes or no."); break;
            }
        }
    }

    private string? Line(string? usual)
    {
        output.Write(usual is null ? "> " : $"[{usual}] > ");
        output.Flush();
        return input.ReadLine()?.Trim();
    }

    private void Show(IReadOnlyList<Choice> shown, bool optional)
    {
        for (var i = 0; i < Math.Min(shown.Count, MostShown); i++)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1,4}  {shown[i].Value}{(shown[i].Label.Length > 0 ? "  " + shown[i].Label : "")}"));
        if (shown.Count > MostShown) output.WriteLine($"      ... and {shown.Count - MostShown} more; type a piece of it.");
        if (optional) output.WriteLine("   -  none");
    }

    private static bool Has(string text, string piece) => text.Contains(piece, StringComparison.OrdinalIgnoreCase);
}
