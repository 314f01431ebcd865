namespace Crossref.Site.Pages.Templating;

/// <summary>A template cannot be read or run. <see cref="Exception.Message"/> is the whole story for whoever wrote it: file:line:column: message.</summary>
public sealed class TemplateProblemException : Exception
{
    /// <summary>A problem at a place; lines and columns count from 1, 0 for the file as a whole.</summary>
    public TemplateProblemException(string file, int line, int column, string problem, Exception? cause = null)
        : base(line == 0 ? $"{file}: {problem}" : FormattableString.Invariant($"{file}:{line}:{column}: {problem}"), cause)
    {
        File = file;
        Line = line;
        Column = column;
        Problem = problem;
    }

    /// <summary>The template.</summary>
    public string File { get; }

    /// <summary>Line, from 1.</summary>
    public int Line { get; }

    /// <summary>Column, from 1.</summary>
    public int Column { get; }

    /// <summary>What is wrong.</summary>
    public string Problem { get; }
}
