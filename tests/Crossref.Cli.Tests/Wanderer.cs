using System.Text.RegularExpressions;

namespace Crossref.Cli.Tests;

/// <summary>Answers whatever stands on the screen by chance, and goes back now and then.</summary>
internal sealed partial class Wanderer(Random random, StringWriter screen) : TextReader
{
    private const string Prompt = "> ";
    private const int MostLines = 150;

    private int _lines;

    internal int Backs { get; private set; }

    public override string? ReadLine()
    {
        if (++_lines > MostLines) return null;
        // What stands between the prompt before and this one.
        var shown = screen.ToString();
        var question = shown[Math.Max(0, shown[..^Prompt.Length].LastIndexOf(Prompt, StringComparison.Ordinal))..];
        var isFirst = question.Contains("Which machine", StringComparison.Ordinal);
        if (_lines < MostLines / 2 && !isFirst && random.Next(6) == 0)
        {
            Backs++;
            return "back";
        }
        var answers = Offer().Matches(question).Select(m => m.Groups["number"].Value).ToList();
        if (Dash().IsMatch(question) && random.Next(3) == 0) answers.Add("-");
        if (Usual().IsMatch(question)) answers.AddRange(["", ""]);
        if (answers.All(a => a is "" or "-")) answers.AddRange(question.Contains("Which way round", StringComparison.Ordinal) ? ["flange: inboard"] : question.Contains("How many", StringComparison.Ordinal) ? ["1"] : ["9000000", "an old word"]);
        if (question.Contains("whole-unit", StringComparison.Ordinal) && random.Next(4) == 0) return "whole-unit";
        // Whoever never says no never comes to an end.
        return question.Contains("Another place?", StringComparison.Ordinal) && random.Next(3) > 0 ? "" : answers[random.Next(answers.Count)];
    }

    [GeneratedRegex("^ +(?<number>[0-9]+)  ", RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Offer();

    [GeneratedRegex("^   -  ", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Dash();

    [GeneratedRegex("^\\[.+\\] > ", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Usual();
}
