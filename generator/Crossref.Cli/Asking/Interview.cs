namespace Crossref.Cli.Asking;

/// <summary>
/// Goes through a row of questions in which every one may depend on the answers before. Going back begins the row anew
/// and gives it the answers up to there, so that no question has to know how it is taken back.
/// </summary>
internal sealed class Interview(Talk talk, Func<IQuestions> begin)
{
    private readonly List<string?> _answers = [];

    /// <summary>Asks what is left to ask; null when somebody went out.</summary>
    internal IQuestions? Run()
    {
        while (true)
        {
            var questions = begin();
            switch (Run(questions.Ask()))
            {
                case ReplyKind.Answer: return questions;
                case ReplyKind.End: return null;
                default:
                    if (!Back()) return null;
                    break;
            }
        }
    }

    /// <summary>Takes the last answer back, so that the next run asks it again; false when there is none.</summary>
    internal bool Back()
    {
        if (_answers.Count == 0) return false;
        _answers.RemoveAt(_answers.Count - 1);
        return true;
    }

    private ReplyKind Run(IEnumerable<Question> questions)
    {
        var answered = 0;
        foreach (var question in questions)
        {
            if (answered == _answers.Count)
            {
                var reply = talk.Ask(question);
                if (reply.Kind != ReplyKind.Answer) return reply.Kind;
                _answers.Add(reply.Value);
            }
            if (_answers[answered++] is { } value) question.Answers[question.Field] = value;
        }
        return ReplyKind.Answer;
    }
}
