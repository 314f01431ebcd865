using Crossref.Site.Recording;

namespace Crossref.Cli.Asking;

/// <summary>A row of questions that lead to records.</summary>
internal interface IQuestions
{
    /// <summary>The questions, each asked for when the ones before it are answered. Gone through once.</summary>
    IEnumerable<Question> Ask();

    /// <summary>The records that the answers give.</summary>
    IReadOnlyList<NewRecord> Form(RecordingDesk desk);
}
