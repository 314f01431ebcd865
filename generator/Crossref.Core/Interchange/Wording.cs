using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Interchange;

/// <summary>Puts evidence into plain sentences.</summary>
public sealed class Wording(Library library)
{
    /// <summary>What has to be checked first, then the machines in which it does not go in.</summary>
    public static IReadOnlyList<string> ConditionsOf(Fact fact) =>
        [.. fact.CheckFirst.Select(t => t.ToString()!).Concat(ExceptionsOf(fact)).Distinct(StringComparer.Ordinal)];

    /// <summary>The machines in which it does not go in, as far as somebody said so and nobody knows whether this is one.</summary>
    public static IEnumerable<string> ExceptionsOf(Fact fact) => fact.Exceptions.Select(s => "not when " + string.Join(", ", s.Terms));

    /// <summary>A part by the number one asks for.</summary>
    public string Part(string id) => library.Parts.GetValueOrDefault(id)?.CurrentNumber ?? id;

    /// <summary>Why a fact is what it is, in one sentence, with what stands against it and what tells the two apart.</summary>
    public string Of(Fact fact)
    {
        if (fact.State == FactState.Nothing) return "Nothing is recorded.";
        var yes = fact.Leading is { } leading ? Clause(leading) : null;
        var no = fact.Negatives.Count > 0 ? Clause(fact.Negatives[0]) : null;
        var text = fact.State switch
        {
            FactState.Disputed => $"Equally strong yes and no: {yes}; against it, {no}",
            FactState.RuledOut when yes is null => $"Does not fit: {no}",
            FactState.RuledOut when fact.Safety && fact.Leading!.Basis >= fact.Negatives[0].Basis =>
                $"Does not fit: on a safety part any no decides, and {no}; the yes does not outweigh it: {yes}",
            FactState.RuledOut => $"Does not fit: {no}; weaker, the other way: {yes}",
            _ when no is not null => $"{Capital(yes!)}; weaker, against it: {no}",
            _ => Capital(yes!),
        };
        return text + Split(fact) + ".";
    }

    /// <summary>Why a path of evidence leads to its part, in one sentence.</summary>
    internal string Of(Path path)
    {
        if (path.Before is null) return Of(path.Fact!);
        var clauses = new List<string>();
        for (var step = path; step is not null; step = step.Before) clauses.Add(Clause(step));
        var lead = path.Substitutions > 1 ? $"Only a lead, {path.Substitutions} substitutions away: " : path.IsLead ? "Only a lead: " : "";
        // Other clauses begin with a number, which stays as it is moulded.
        if (lead.Length == 0 && path.Step.Kind == StepKind.Superseded) clauses[0] = Capital(clauses[0]);
        return lead + string.Join("; ", clauses) + ".";
    }

    /// <summary>Sizes of a part that differ from those of the parts that are listed, as a clause.</summary>
    internal string OfMismatch(SizeBook sizes, IReadOnlyList<string> differing, string part, IReadOnlyList<string> listed)
    {
        var clauses = differing.Select(attribute =>
        {
            var here = listed.Select(other => SizeText(sizes, other, attribute)).Distinct(StringComparer.Ordinal);
            return $"{SizeName.InWords(attribute)} {SizeText(sizes, part, attribute)}, where {string.Join(" or ", here)} belongs";
        });
        return $"{string.Join("; ", clauses)} ({string.Join(", ", listed.Select(Part))})";
    }

    private static string SizeText(SizeBook sizes, string part, string attribute) =>
        sizes.Of(part)[attribute].Size is var size && size.Quantity is { } quantity ? quantity.ToString() : size.Text;

    /// <summary>One statement, as a clause: what it rests on, who says so, when and where it can be read.</summary>
    public string Clause(Statement statement)
    {
        var what = What(statement);
        var details = new List<string>();
        if (statement.By is { } by) details.Add(by);
        if (!statement.Date.IsUnknown) details.Add(statement.Date.ToString());
        if (SourceOf(statement) is { } source) details.Add(source);
        return details.Count == 0 ? what : $"{what} ({string.Join("; ", details)})";
    }

    private string Clause(Path path)
    {
        var (to, from) = (Part(path.Step.To), Part(path.Step.From));
        return path.Step.Kind switch
        {
            StepKind.Substitution => $"{to} may stand in for {from}: {FactClause(path.Fact!)}",
            StepKind.Superseded => $"the maker sends {to} instead of {from}",
            StepKind.SamePosition => $"{to} and {from} both stand at {PlaceName(path.Step.Via!)}",
            StepKind.SameSize => $"{to} and {from} agree in every size that decides",
            StepKind.Listed => $"{to} is {FactClause(path.Fact!)}",
            _ => $"{to} stands here: {FactClause(path.Fact!)}",
        };
    }

    private string PlaceName(string address)
    {
        var position = library.Positions[address];
        return $"{position.Name} ({library.Families[position.Family].Name})";
    }

    private string FactClause(Fact fact) =>
        Clause(fact.Leading!) + (fact.Negatives.Count > 0 ? $", though weaker, {Clause(fact.Negatives[0])}" : "");

    private string What(Statement s) => (s.IsPositive ? Yes(s) : No(s)) + (s.Lowered is { } why ? $", but {why}" : "");

    private string Yes(Statement s)
    {
        var place = In(s);
        return s.Basis switch
        {
            _ when s.Failure is not null => $"fitted{place}, {s.Failure}",
            Basis.Documented => s.Kind == StatementKind.Listing ? "named in the maker's list" : "the maker's document says so",
            Basis.Proven => $"proven: ran {s.Run}{place}",
            Basis.Ran => $"ran {s.Run}{place}",
            Basis.Seated => $"seated{place}",
            Basis.Moulded => "the same number is moulded on it",
            Basis.Measured => "the sizes were measured and agree",
            Basis.Offered => "a seller offers it for this",
            _ => s.Kind == StatementKind.Listing ? "listed" : "somebody said so",
        };
    }

    private string No(Statement s)
    {
        var place = In(s);
        return s.Basis switch
        {
            Basis.Documented => "the maker's document says no",
            Basis.Proven or Basis.Ran => $"ran {s.Run}{place} and did not hold up",
            Basis.Seated => $"tried{place} and did not go in",
            Basis.Moulded => "another number is moulded on it",
            Basis.Measured => "the sizes were measured and differ",
            Basis.Offered => "a seller says that it does not fit",
            _ => "somebody said that it does not fit",
        };
    }

    private string In(Statement s) => s.Machine is { } machine ? " in " + library.MachineName(machine) : "";

    private string? SourceOf(Statement statement)
    {
        if (statement.Source is not { } id) return null;
        var title = library.Sources.GetValueOrDefault(id)?.Title ?? id;
        return statement.Locator is { } locator ? $"{title}, {locator}" : title;
    }

    private string Split(Fact fact)
    {
        if (fact.Leading is null || fact.Negatives.Count == 0) return "";
        var found = new SplitFinder(library).Find(fact.Positives, fact.Negatives);
        return found.Count == 0 ? "; nothing on record tells the two apart" : "; what tells them apart: " + string.Join(", ", found);
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
