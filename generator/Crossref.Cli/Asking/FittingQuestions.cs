using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>What went into a place, where it came from, which way round, and what was changed to make it fit.</summary>
internal sealed class FittingQuestions(Knowledge known, Job job, Position position, string? quantity)
{
    private readonly Library _library = known.Library;
    private readonly Dictionary<string, string> _answers = new(StringComparer.Ordinal);
    private readonly FittingOffers _offers = new(known, job, position);

    /// <summary>What has to be said about the part that went in; null for nothing.</summary>
    internal string? Remark { get; private set; }

    internal IEnumerable<Question> Ask()
    {
        yield return new Question(_answers, "fitted", "What went in?")
        {
            Without = "nothing",
            Offers = _offers.All(),
            Read = known.ReadPart,
        };
        if (!_answers.TryGetValue("fitted", out var fitted)) yield break;
        var (part, from) = FittingOffers.Read(fitted);
        if (from is null)
        {
            var holders = _offers.HoldersOf(part);
            yield return new Question(_answers, "from", "Where did it come from?")
            {
                Without = "not known",
                Offers = [.. holders, new Choice(FittingOffers.New, "bought")],
                Default = holders.Count == 0 ? FittingOffers.New : null,
                Read = text => Knowledge.Require(text, [.. _library.Bags.Keys, .. _library.Units.Keys, .. _library.Orders.Keys, FittingOffers.New], "bag, unit or order"),
            };
            from = _answers.GetValueOrDefault("from");
        }
        if (_library.Parts[part].Handed || position.Orientation.Count > 0) yield return WhichWay(_library.Parts[part].Handed);
        if (_offers.ChangeOf(part) is { } change)
        {
            yield return new Question(_answers, "change", change.Length > 0 ? "What was changed to make it fit?" : "It is not on record as fitting here. Was anything changed to make it fit?")
            {
                Without = "nothing",
                Default = change.Length > 0 ? change : Question.None,
            };
        }
        job.Add("fitted", job.Written(position), part,
            ("from", from), ("orientation", _answers.GetValueOrDefault("orientation")), ("change", _answers.GetValueOrDefault("change")), ("quantity", quantity));
        Remark = _offers.RemarkOn(part);
    }

    private Question WhichWay(bool must)
    {
        // A comma separates the sides, so a position whose words hold one can only be typed in other words.
        var usual = position.Orientation.Values.Any(v => v.Contains(',', StringComparison.Ordinal)) ? "" : string.Join(", ", position.Orientation.Select(o => $"{o.Key}: {o.Value}"));
        return new Question(_answers, "orientation", $"Which way round?{(usual.Length == 0 ? " Such as flange: inboard." : "")}")
        {
            Without = must ? null : "not noted",
            Default = usual.Length > 0 ? usual : null,
            // A position that speaks of one side only needs the other word alone.
            Read = text => text.Split(',').All(p => p.Split(':', 2) is [{ } side, { } way] && side.Trim().Length > 0 && way.Trim().Length > 0) ? text
                : position.Orientation.Count == 1 && !text.Contains(':', StringComparison.Ordinal) && !text.Contains(',', StringComparison.Ordinal) ? $"{position.Orientation.Keys.Single()}: {text}"
                : throw new CannotRunException($"'{text}' does not say which side lies where.", $"Write it as {(usual.Length > 0 ? usual : "flange: inboard")}."),
        };
    }
}
