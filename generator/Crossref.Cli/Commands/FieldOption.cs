using System.CommandLine;
using Crossref.Site.Recording;

namespace Crossref.Cli.Commands;

/// <summary>The fields of a form as flags.</summary>
internal static class FieldOption
{
    internal static Option Of(RecordField field) => field.IsTick
        ? new Option<bool>("--" + field.Name) { Description = Sentence(field) }
        : new Option<string?>("--" + field.Name) { Description = Sentence(field), HelpName = field.Words.Count > 0 ? "WORD" : "TEXT" };

    /// <summary>What the command line gives, by field.</summary>
    internal static Dictionary<string, string> Given(IReadOnlyDictionary<string, Option> flags, ParseResult parsed)
    {
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, flag) in flags)
        {
            var text = flag is Option<bool> tick ? parsed.GetValue(tick) ? "true" : null : parsed.GetValue((Option<string?>)flag);
            if (!string.IsNullOrWhiteSpace(text)) given[name] = text;
        }
        return given;
    }

    private static string Sentence(RecordField field) =>
        char.ToUpperInvariant(field.Says[0]) + field.Says[1..] + (field.Words.Count > 1 ? ": " + string.Join(", ", field.Words) : "");
}
