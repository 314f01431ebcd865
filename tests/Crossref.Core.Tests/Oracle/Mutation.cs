namespace Crossref.Core.Tests.Oracle;

/// <summary>
/// One rule left out or turned round. The rules in the order in which they are told; each name says what is
/// believed instead. None of them stands for a rule whose absence no answer can show: that a run needs a source to
/// prove anything (without one it counts as told and is no run), that no part comes twice on a path (a detour is never
/// better), that parts of the same size are of one kind (no two kinds have the same sizes to decide by), that a condition known to be false removes a path (its statement is set aside before), and that the other
/// position of a same-position step is another one (both parts stand here by themselves then).
/// </summary>
internal enum Mutation
{
    // Ranks.
    ProvenAboveDocumented, RanAboveProven, SeatedAboveRan, MouldedAboveSeated, MeasuredAboveMoulded,
    OfferedAboveMeasured, ToldAboveOffered,
    // What a basis needs.
    NoSourceNeeded, AnySourceDocuments, NoSourceDocuments, ShortRunCountsAsRan, ShortRunCountsAsTold, RunMustExceed, HoursRunLikeSheets,
    CyclesNeverRun,
    // Proven.
    NegativesProve, DamagedNeighboursProve, UnseenNeighboursProveNothing, ShareOfLifeProvesNothing, AnyShareOfLifeProves, ShareOfLifeMustBeExceeded,
    LifeInAnyUnit, UnknownLifeProves, PairProvesNothing, PairOfAnyConditions, PairOfOneMachine, PairOfUnnamedMachines,
    PairOfAnyLength, PairOfOneLongRun, PairMustExceed, PairInHoursLikeSheets, EveryRunOfAProvenFactRises, PairOfDifferentFacts,
    // Facts, listings, both ways.
    WhereIsIgnored, WhereFamilyCoversNothing, WherePositionCoversFamily, WhereDefaultsToNowhere, ListingSaysNothing,
    ListingAlwaysDocumented, ListingNeverDocumented, BothWaysIsOneWay, OneWayIsBothWays, ReverseKeepsRan, ReverseKeepsSeated,
    ReverseIsAlwaysMeasured,
    // Withdrawals.
    WithdrawalsDoNothing, WithdrawnWithdrawalsStillWork, WithdrawalOfARepairDoesNothing,
    // Only-if.
    FalseStillCounts, UnknownIsTrue, UnknownPositiveIsOut, UnknownNegativeCounts, NoExceptionCarried, NoCheckFirstCarried,
    KnownTermsCarriedToo, ExceptionSaysUnknownTermsOnly,
    UnknownNegativeSparesSafetyPosition, UnknownNegativeSparesSafetyPart, MachineMainsIgnored, ModelMainsIgnored,
    LibraryMainsIgnored, UnknownBeatsFalse, AnyTermIsEnough, ModelIgnored, SerialFromExclusive, SerialToExclusive, SerialLettersIgnored,
    SerialLettersByCase,    ListingConditionIgnored,
    // Standing.
    TieStands, TieIsRuledOut, StrongerNegativeDisputes, StrongerNegativeIsIgnored, WeakerNegativeDisputes, LoneNegativeIsNothing,
    NegativeSparesSafetyPosition, NegativeSparesSafetyPart, NegativeAlwaysRulesOut,
    // The leading statement.
    LeadingOfAnyRank, LeadingWithChangeFirst, LeadingChangeIgnored, LeadingMostConditions, LeadingConditionsIgnored,
    LeadingListingLast, LeadingEarliestDate, LeadingHighestId,
    // Repairs.
    FittingSaysNothing, FittingOfListedPartSaysToo, FittingNeverRan, FittingIgnoresRemoval, FittingIgnoresRefit,
    FittingIgnoresSwap, AnySwapEnds, OtherPositionEnds, OpenRunCountsNothing, RepairsAreNoReadings, ResetIsNoReset, ResetComesFirst, DropCounts, RepairsById,
    OtherCountersCount,
    OtherUnitsCount, OtherMachinesCount, FailureIsIgnored, FailureAlwaysLowers, FindingsAreNoFailure, RemovedConditionsAreNoFailure, SoundWordsFail,
    DirtyFails, UnknownLifeWasReached, BenchFittingSaysNothing, FittingChangeIgnored,
    FittingNeighboursIgnored, FittingInNoMachine,
    // Safety.
    SafetyNotByKind, SafetyPartNotByMark, SafetyPositionNotByMark, SafetyPositionNotByListedPart, SafetyPositionNotByRetiredPart,
    // Retired records.
    RetiredClaimsCount, RetiredPartsCount, RetiredSourcesCount, RetiredRepairsCount, RetiredMachinesCount,
    // The machine asked about.
    MachineOfAnotherFamilyJudges,
    // Steps.
    DisputedSubstitutionSteps, NegativeSubstitutionRulesOut, SubstitutionRunsBackwards, NoSubstitution, NoSuperseded,
    SupersededRunsBackwards, SupersededAlwaysDocumented, SupersededAlwaysTold, SupersededIsASubstitution, SupersededIsLimited,
    NoSamePosition, SamePositionOfAnyKind, SamePositionOfAnyRank, SamePositionFromRan,
    SamePositionAlwaysWithoutMachine, SamePositionAlwaysInMachine, SamePositionByTheStronger, SamePositionWorst,
    SamePositionLastAddress, SamePositionConditionsHidden, SamePositionChangesHidden, ExceptionsOfOtherStepsHidden, ListedWheneverListed, SamePositionConditionsExclude, SamePositionConditionsCount,
    // Other shops.
    ForeignSourcesDocument, ConfirmedSourcesDocumentNothing, ForeignWithdrawalsWork, TwoShopsProveNothing, ForeignRepairsReadOurCounters,
    // Sizes.
    NoSameSize, SameSizeOfKindsWithoutSizes, SameSizeOfMustMatchOnly, SameSizeRanksAsTold, UnknownSizesAgree, UnknownSizesDiffer,
    UncertaintiesAddUp, UncertaintyIsIgnored, ToleranceIsIgnored, UncertaintyAndToleranceAddUp, SmallerOfUncertaintyAndTolerance,
    DesignationSaysNothing, DesignationBeatsTyped, ShieldsByTheLetter, MustMatchDoesNothing, EveryDecidingMustMatch, MustMatchAnyListed,
    MustMatchFalseListingCounts, MustMatchUnknownListingIsNone, MustMatchRetiredListedCounts, MismatchedStaysOnPaths, MismatchedDisputeStaysDisputed,
    MismatchedWithoutPathCounts,
    // Paths.
    TwoStepsAtMost, FourStepsAtMost, LeadGoesOn, FirstStepIsTheStanding, LastStepIsTheStanding, OneSubstitutionIsALead,
    TwoSubstitutionsKeep, ThreeSubstitutionsMakeALead, LeadStepKeeps, ConditionsOfFirstStepOnly, ChangesOfFirstStepOnly,
    NothingExcludes, ModelsDoNotExclude, SerialsDoNotExclude, MainsDoNotExclude, SerialsExcludeAcrossLetters,
    RuledOutStaysOnPaths, DisputedStaysOnPaths, DirectAlwaysWins,
    BestIgnoresStanding, BestIgnoresWeakest, BestIgnoresSteps, BestIgnoresConditions, BestCountsConditionsTwice,
    BestCountsNoExceptions, ExceptionsExclude, BestIgnoresParts, BestIgnoresKinds,
    BestTakesMostSteps, BestTakesMostConditions,
    SortIgnoresStanding, SortIgnoresWeakest, SortIgnoresSteps, SortPartsBackwards,
    // Accepted.
    AcceptEverything, AcceptAboveOnly, AcceptLeads, SafetyAcceptsFromSetting, SafetyAcceptsUnderConditions,
    SafetyFormsLeads, SafetyFormsChains, SafetyOfPositionOnly, SafetyOfLastPartOnly, SafetyOfPartsOnly,
}
