namespace Crossref.Cli.Asking;

/// <summary>What came back on a question.</summary>
internal enum ReplyKind
{
    /// <summary>An answer, or none where none is needed.</summary>
    Answer,
    /// <summary>Back to the question before.</summary>
    Back,
    /// <summary>No more input.</summary>
    End,
}
