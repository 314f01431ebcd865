using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>What a reference may point at.</summary>
[Flags]
public enum Target
{
    /// <summary>Nothing.</summary>
    None = 0,
    /// <summary>A family.</summary>
    Family = 1 << RecordType.Family,
    /// <summary>A part.</summary>
    Part = 1 << RecordType.Part,
    /// <summary>A source.</summary>
    Source = 1 << RecordType.Source,
    /// <summary>A claim, also one that a repair makes.</summary>
    Claim = 1 << RecordType.Claim,
    /// <summary>A repair.</summary>
    Repair = 1 << RecordType.Repair,
    /// <summary>A machine.</summary>
    Machine = 1 << RecordType.Machine,
    /// <summary>A unit.</summary>
    Unit = 1 << RecordType.Unit,
    /// <summary>A bag.</summary>
    Bag = 1 << RecordType.Bag,
    /// <summary>An order.</summary>
    Order = 1 << RecordType.Order,
    /// <summary>A symptom.</summary>
    Symptom = 1 << RecordType.Symptom,
    /// <summary>A question.</summary>
    Question = 1 << RecordType.Question,
    /// <summary>A note.</summary>
    Note = 1 << RecordType.Note,
    /// <summary>An assembly, as family/assembly.</summary>
    Assembly = 1 << 16,
    /// <summary>A position, as family/assembly/position.</summary>
    Position = 1 << 17,
    /// <summary>Any record, assembly or position.</summary>
    Anything = Family | Part | Source | Claim | Repair | Machine | Unit | Bag | Order | Symptom | Question | Note | Assembly | Position,
}
