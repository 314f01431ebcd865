using System.CommandLine;
using System.Text.Json.Nodes;
using Crossref.Cli.Printing;

namespace Crossref.Cli.Commands;

/// <summary><c>crossref find</c>: lookup, on the same index and ranking as the site.</summary>
internal static class FindCommand
{
    internal static Command Create(CommonOptions options)
    {
        var text = new Argument<string[]>("TEXT") { Description = "A number or a piece of one, words, a symptom", Arity = ArgumentArity.OneOrMore };
        var command = new Command("find", "Look up parts, positions, symptoms and everything else by number or words.") { text };
        command.SetAction(parsed => throw new NotSupportedException());
        return command;
    }
}
