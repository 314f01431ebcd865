using System.CommandLine;
using Crossref.Cli.Printing;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Recording;

namespace Crossref.Cli;

/// <summary>A content folder as a command finds it: read, checked, and the library if it can be worked with.</summary>
internal sealed class Workspace
{
    private readonly Library? _library;
    private readonly bool _json;

    private Workspace(ReadResult read, IReadOnlyList<Diagnostic> diagnostics, bool json)
    {
        Read = read;
        _library = read.Library;
        _json = json;
        Diagnostics = diagnostics;
    }

    /// <summary>The folder as it was read.</summary>
    internal ReadResult Read { get; }

    /// <summary>Everything that reading and checking found, in order of place.</summary>
    internal IReadOnlyList<Diagnostic> Diagnostics { get; }

    /// <summary>Whether an error was found.</summary>
    internal bool HasErrors => _library is null || Errors.Count > 0;

    /// <summary>The errors among what was found.</summary>
    internal IReadOnlyList<Diagnostic> Errors => [.. Diagnostics.Where(d => d.Severity == Severity.Error)];

    /// <summary>Passes when there is such a folder.</summary>
    /// <exception cref="CannotRunException">There is not.</exception>
    internal static void Require(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new CannotRunException(
                File.Exists(folder) ? $"{folder} is a file, not a folder." : $"There is no folder {Path.GetFullPath(folder)}.",
                "Go to the folder that holds your content folder, or name it: --content DIR.");
        }
    }

    /// <summary>Opens the folder that the command line names.</summary>
    /// <param name="options">The options.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="inbox">Whether to say as well what cannot be taken in from the inbox.</param>
    /// <exception cref="CannotRunException">There is no such folder, or nothing in it.</exception>
    internal static Workspace Open(CommonOptions options, ParseResult parsed, bool inbox = false)
    {
        var folder = options.Content(parsed);
        Require(folder);
        try
        {
            ContentStore.FinishInterrupted(folder, options.Disk);
            if (!Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Any())
                throw new CannotRunException($"The folder {Path.GetFullPath(folder)} holds no records.", "Start with a file library.yaml that says: library: my-shop. The README shows a first machine in five minutes.");
            var read = ContentReader.Read(folder);
            var today = options.Today(parsed);
            return new Workspace(read, DiagnosticOrder.Sort(read.Check(today).Concat(inbox ? Inbox.Look(folder, today).Diagnostics : [])), options.Json(parsed));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException && e is not StoreException)
        {
            throw new CannotRunException($"The folder {Path.GetFullPath(folder)} could not be read: {e.Message}", "Check that the disk or stick is in and that you may read it.");
        }
    }

    /// <summary>The library; null when it has errors.</summary>
    internal Library? SoundLibrary => HasErrors ? null : _library;

    /// <summary>The library, or null after its errors were printed.</summary>
    internal Library? LibraryOrErrors(ParseResult parsed)
    {
        if (SoundLibrary is { } library) return library;
        DiagnosticPrinter.PrintRefusal(Errors, _json, parsed.InvocationConfiguration);
        return null;
    }
}
