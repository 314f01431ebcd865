namespace Crossref.Core.Records;

/// <summary>The documents a content folder may hold; the first key of a document names its type.</summary>
public enum RecordType
{
    /// <summary>Whose copy this is, and its settings.</summary>
    Library,
    /// <summary>A machine family with its assemblies and positions.</summary>
    Family,
    /// <summary>A part, as a maker numbers it.</summary>
    Part,
    /// <summary>Where a statement was read, measured or heard.</summary>
    Source,
    /// <summary>Somebody's statement that a part fits or does not fit.</summary>
    Claim,
    /// <summary>One repair, as done.</summary>
    Repair,
    /// <summary>One machine in the shop.</summary>
    Machine,
    /// <summary>One individual assembly.</summary>
    Unit,
    /// <summary>A bag of used or spare parts.</summary>
    Bag,
    /// <summary>Something bought.</summary>
    Order,
    /// <summary>A mark, noise or fault and its suspects.</summary>
    Symptom,
    /// <summary>Something nobody knows yet.</summary>
    Question,
    /// <summary>A Markdown note.</summary>
    Note,
}
