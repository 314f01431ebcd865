using Crossref.Core.Checking.Rules;
using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>Everything that is checked across records.</summary>
public static class Checks
{
    /// <summary>The rules, in the order of their codes.</summary>
    internal static IReadOnlyList<IRule> Rules { get; } =
    [
        new RepeatedId(), new RepeatedAddress(), new DanglingReference(), new WrongType(), new UnknownPosition(),
        new UnknownAssembly(), new RetiredReference(), new UnknownRole(), new UnknownModel(), new PositionOfOtherFamily(),
        new NumberTaken(), new AlsoHasRecord(), new SupersessionCycle(), new MirrorNotMutual(), new MirrorSameHand(),
        new KitCycle(), new KindDiffers(),
        new WithdrawalCycle(), new WithdrawsOtherFact(), new DocumentedWithoutDocument(), new NoSource(), new RanTooShort(),
        new SerialsReversed(), new SerialsNotComparable(), new ReplacesItself(),
        new FittedWithoutOrientation(), new ListedWithoutOrientation(), new BagBelowZero(), new CounterBackwards(),
        new TakenFromOther(), new UnitInOtherFamily(), new SwapOfOtherAssembly(),
        new FutureDate(), new OrderDates(), new UsedBeforeThere(), new WithdrawnBeforeMade(),
        new UnknownDesignation(), new SizeAgainstDesignation(), new SizesAgainstClaim(),
    ];

    /// <summary>Every diagnostic of every rule, sorted by place and code.</summary>
    public static IReadOnlyList<Diagnostic> Run(Library library, CheckContext context)
    {
        var scope = new CheckScope(library, context);
        return DiagnosticOrder.Sort(Rules.SelectMany(r => r.Check(scope)));
    }
}
