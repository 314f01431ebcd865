using System.Globalization;
using System.Numerics;
using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>What an <c>only-if</c> says of a machine, term by term, read from the text of sections 3 and 5.</summary>
internal sealed class NaiveConditions(Library library, Func<Mutation, bool> believes)
{
    /// <summary>What is known of a machine.</summary>
    internal sealed record Context(string? Model, string? Serial, decimal? Mains);

    /// <summary>"unknown without a machine; mains come from the machine, else its model, else the library".</summary>
    internal Context ContextOf(string? machineId)
    {
        if (machineId is null) return new Context(null, null, null);
        var machine = library.Machines[machineId];
        decimal? mains = null;
        if (!believes(Mutation.LibraryMainsIgnored)) mains = library.Card.Mains;
        foreach (var model in library.Families[machine.Family.Id].Models)
            if (model.Name == machine.Model && model.Mains is not null && !believes(Mutation.ModelMainsIgnored)) mains = model.Mains;
        if (machine.Mains is not null && !believes(Mutation.MachineMainsIgnored)) mains = machine.Mains;
        return new Context(machine.Model, machine.Serial, mains);
    }

    /// <summary>The terms of a condition as conditions of their own: a set of models, one range of serials, one voltage.</summary>
    internal static List<Condition> Terms(Condition onlyIf)
    {
        var terms = new List<Condition>();
        if (onlyIf.Models.Count > 0) terms.Add(new Condition { Models = onlyIf.Models });
        if (onlyIf.SerialFrom is not null || onlyIf.SerialTo is not null)
            terms.Add(new Condition { SerialFrom = onlyIf.SerialFrom, SerialTo = onlyIf.SerialTo });
        if (onlyIf.Mains is not null) terms.Add(new Condition { Mains = onlyIf.Mains });
        return terms;
    }

    /// <summary>A term in words.</summary>
    internal static string Words(Condition term)
    {
        if (term.Models.Count > 0)
            return "model " + string.Join(" or ", term.Models.ToHashSet().OrderBy(m => m, StringComparer.Ordinal));
        if (term.Mains is { } volts) return string.Format(CultureInfo.InvariantCulture, "mains {0:0.##} V", volts);
        if (term.SerialFrom is null) return $"serial {term.SerialTo} or earlier";
        return term.SerialTo is null ? $"serial {term.SerialFrom} or later" : $"serial {term.SerialFrom} to {term.SerialTo}";
    }

    /// <summary>"only-if is true, false or unknown": false when any term is false, else unknown when any is unknown.</summary>
    internal Truth Holds(Condition onlyIf, Context context)
    {
        var truths = Terms(onlyIf).Select(t => HoldsTerm(t, context)).ToList();
        if (believes(Mutation.UnknownBeatsFalse) && truths.Contains(Truth.Unknown)) return Truth.Unknown;
        if (believes(Mutation.AnyTermIsEnough) && truths.Contains(Truth.True)) return Truth.True;
        if (truths.Contains(Truth.False)) return Truth.False;
        if (truths.Contains(Truth.Unknown)) return believes(Mutation.UnknownIsTrue) ? Truth.True : Truth.Unknown;
        return Truth.True;
    }

    internal Truth HoldsTerm(Condition term, Context context)
    {
        if (term.Models.Count > 0)
        {
            if (context.Model is null || believes(Mutation.ModelIgnored)) return Truth.Unknown;
            return term.Models.Contains(context.Model) ? Truth.True : Truth.False;
        }
        if (term.Mains is not null)
        {
            if (context.Mains is null) return Truth.Unknown;
            return term.Mains == context.Mains ? Truth.True : Truth.False;
        }
        // "a range compares serials with the same leading letters by their number, inclusive; others are unknown"
        if (context.Serial is null) return Truth.Unknown;
        var unknown = false;
        if (term.SerialFrom is not null)
        {
            var order = Order(context.Serial, term.SerialFrom);
            if (order < 0 || (order == 0 && believes(Mutation.SerialFromExclusive))) return Truth.False;
            if (order is null) unknown = true;
        }
        if (term.SerialTo is not null)
        {
            var order = Order(context.Serial, term.SerialTo);
            if (order > 0 || (order == 0 && believes(Mutation.SerialToExclusive))) return Truth.False;
            if (order is null) unknown = true;
        }
        return unknown ? Truth.Unknown : Truth.True;
    }

    /// <summary>
    /// "two that exclude each other": term by term, models with none in common, different mains, ranges of serials of
    /// the same letters that do not meet.
    /// </summary>
    internal bool Exclude(Condition one, Condition other)
    {
        if (believes(Mutation.NothingExcludes)) return false;
        if (one.Models.Count > 0 && other.Models.Count > 0 && !believes(Mutation.ModelsDoNotExclude) &&
            one.Models.All(m => !other.Models.Contains(m)))
            return true;
        if (one.Mains is not null && other.Mains is not null && !believes(Mutation.MainsDoNotExclude) && one.Mains != other.Mains)
            return true;
        if (believes(Mutation.SerialsDoNotExclude)) return false;
        return EndsBefore(one, other) || EndsBefore(other, one);
    }

    private bool EndsBefore(Condition one, Condition other)
    {
        if (one.SerialTo is null || other.SerialFrom is null) return false;
        var order = Order(one.SerialTo, other.SerialFrom);
        return order is null ? believes(Mutation.SerialsExcludeAcrossLetters) : order < 0;
    }

    // Leading letters, whatever their case, then nothing but digits; anything else compares with nothing.
    private int? Order(string one, string other)
    {
        if (Split(one) is not { } a || Split(other) is not { } b) return null;
        var same = believes(Mutation.SerialLettersByCase)
            ? one[..a.Letters.Length] == other[..b.Letters.Length] : a.Letters == b.Letters;
        if (!same && !believes(Mutation.SerialLettersIgnored)) return null;
        return a.Number.CompareTo(b.Number);
    }

    private static (string Letters, BigInteger Number)? Split(string serial)
    {
        serial = serial.Trim().ToUpperInvariant();
        var i = 0;
        while (i < serial.Length && serial[i] is >= 'A' and <= 'Z') i++;
        if (i == serial.Length) return null;
        for (var j = i; j < serial.Length; j++)
            if (serial[j] is < '0' or > '9') return null;
        return (serial[..i], BigInteger.Parse(serial[i..], CultureInfo.InvariantCulture));
    }
}
