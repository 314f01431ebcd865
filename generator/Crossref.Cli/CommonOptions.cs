using System.CommandLine;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Pages;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Sharing.Publishing;

namespace Crossref.Cli;

/// <summary>The options that every command takes.</summary>
internal sealed class CommonOptions
{
    private readonly Option<string> _content = new("--content")
    {
        Description = "The folder with your records and notes",
        HelpName = "DIR",
        DefaultValueFactory = _ => "content",
        Recursive = true,
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON, for other programs", Recursive = true };

    private readonly Option<string> _date = new("--date")
    {
        Description = "Today's date, such as 2026-02-11; without it the PC's clock",
        HelpName = "DATE",
        Recursive = true,
    };

    /// <summary>The disk that content folders are changed on.</summary>
    internal IDisk Disk { get; init; } = new Disk();

    /// <summary>Where answers to questions come from.</summary>
    internal TextReader Input { get; init; } = TextReader.Null;

    /// <summary>Whether somebody sits there who can answer.</summary>
    internal bool AtKeyboard { get; init; }

    internal void AddTo(RootCommand root)
    {
        root.Options.Add(_content);
        root.Options.Add(_json);
        root.Options.Add(_date);
    }

    internal string Content(ParseResult parsed) => parsed.GetValue(_content)!;

    /// <summary>Whether the command line names the folder itself.</summary>
    internal bool NamesContent(ParseResult parsed) => parsed.GetResult(_content) is { Implicit: false };

    internal bool Json(ParseResult parsed) => parsed.GetValue(_json);

    /// <summary>What a site is built with, besides the library: what lies in the content folder and is no record.</summary>
    internal SiteOptions ForSite(ParseResult parsed, string? templates, PublishedState? published) => new(Today(parsed))
    {
        TemplateFolder = templates,
        ReadPicture = ContentPictures.In(Content(parsed)),
        Published = published,
        Conflicts = Conflicts.Read(Content(parsed)),
        CameIn = CameIn.Read(Content(parsed), Disk),
    };

    /// <summary>The date to work with: the one that was given, else the clock's.</summary>
    internal DateOnly Today(ParseResult parsed)
    {
        if (parsed.GetValue(_date) is not { } text) return DateOnly.FromDateTime(DateTime.Now);
        if (PartialDate.TryParse(text, out var date) && date.Day > 0) return date.Earliest!.Value;
        throw new CannotRunException($"'{text}' is not a date.", "Write year, month and day, such as --date 2026-02-11.");
    }
}
