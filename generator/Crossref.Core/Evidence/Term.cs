using System.Globalization;
using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>One thing that a condition demands: a model, a range of serials, or a mains voltage.</summary>
public abstract record Term
{
    private Term() { }

    /// <summary>Whether it holds for a machine.</summary>
    public abstract Truth HoldsFor(MachineContext machine);

    /// <summary>Whether no machine can meet both.</summary>
    public abstract bool Excludes(Term other);

    /// <summary>The terms of a condition, in the order they are always shown.</summary>
    public static IReadOnlyList<Term> Of(Condition condition)
    {
        var terms = new List<Term>(3);
        if (condition.Models.Count > 0)
            terms.Add(new ModelTerm(string.Join(" or ", condition.Models.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)), condition.Models));
        if (condition.SerialFrom is not null || condition.SerialTo is not null)
            terms.Add(new SerialTerm(condition.SerialFrom, condition.SerialTo));
        if (condition.Mains is { } volts) terms.Add(new MainsTerm(volts));
        return terms;
    }

    private static Truth Known(bool value) => value ? Truth.True : Truth.False;

    private sealed record ModelTerm(string Text, IReadOnlyList<string> Models) : Term
    {
        public override Truth HoldsFor(MachineContext machine) =>
            machine.Model is null ? Truth.Unknown : Known(Models.Contains(machine.Model, StringComparer.Ordinal));

        public override bool Excludes(Term other) => other is ModelTerm m && !m.Models.Intersect(Models, StringComparer.Ordinal).Any();

        public bool Equals(ModelTerm? other) => other is not null && Text == other.Text;

        public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

        public override string ToString() => "model " + Text;
    }

    private sealed record SerialTerm(string? From, string? To) : Term
    {
        public override Truth HoldsFor(MachineContext machine)
        {
            if (machine.Serial is null) return Truth.Unknown;
            var (low, high) = (Within(From, machine.Serial), Within(machine.Serial, To));
            return (low, high) switch
            {
                (Truth.False, _) or (_, Truth.False) => Truth.False,
                (Truth.True, Truth.True) => Truth.True,
                _ => Truth.Unknown,
            };
        }

        public override bool Excludes(Term other) =>
            other is SerialTerm s && (Within(From, s.To) == Truth.False || Within(s.From, To) == Truth.False);

        public override string ToString() => (From, To) switch
        {
            (null, _) => $"serial {To} or earlier",
            (_, null) => $"serial {From} or later",
            _ => $"serial {From} to {To}",
        };

        // An open end is never crossed.
        private static Truth Within(string? low, string? high)
        {
            if (low is null || high is null) return Truth.True;
            return Serial.Compare(low, high) is { } order ? Known(order <= 0) : Truth.Unknown;
        }
    }

    private sealed record MainsTerm(decimal Volts) : Term
    {
        public override Truth HoldsFor(MachineContext machine) => machine.Mains is { } volts ? Known(volts == Volts) : Truth.Unknown;

        public override bool Excludes(Term other) => other is MainsTerm m && m.Volts != Volts;

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"mains {Volts:0.##} V");
    }
}
