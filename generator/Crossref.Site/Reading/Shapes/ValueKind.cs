namespace Crossref.Site.Reading.Shapes;

/// <summary>What a value is read as.</summary>
internal enum ValueKind
{
    /// <summary>Any text.</summary>
    Text,
    /// <summary>The id of the thing itself, unique in the library or in its parent.</summary>
    Id,
    /// <summary>The id or address of something else.</summary>
    Reference,
    /// <summary>The local id of an assembly.</summary>
    LocalAssembly,
    /// <summary>A position: its local id, or assembly/position.</summary>
    LocalPosition,
    /// <summary>One word of a vocabulary.</summary>
    Word,
    /// <summary>A word of a vocabulary that may be added to; another word is a warning.</summary>
    OpenWord,
    /// <summary>A quantity with its unit.</summary>
    Quantity,
    /// <summary>A number.</summary>
    Number,
    /// <summary>A whole number.</summary>
    Whole,
    /// <summary>A number of sheets, cycles or hours.</summary>
    Life,
    /// <summary>A waiting time in minutes or hours.</summary>
    Wait,
    /// <summary>true or false.</summary>
    TrueFalse,
    /// <summary>A day, a month, a year, or unknown.</summary>
    Date,
    /// <summary>A list of values of one shape.</summary>
    List,
    /// <summary>A map with given keys.</summary>
    Map,
    /// <summary>A map of words to text.</summary>
    TextMap,
    /// <summary>The sizes of a part by attribute.</summary>
    Sizes,
}
