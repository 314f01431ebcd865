namespace Crossref.Core.Checking;

/// <summary>What became of a reference.</summary>
internal enum Fate
{
    /// <summary>It leads to what it should, or nobody can know.</summary>
    Fine,
    /// <summary>It leads to something retired.</summary>
    Retired,
    /// <summary>There is no such record.</summary>
    Missing,
    /// <summary>There is no such position.</summary>
    UnknownPosition,
    /// <summary>There is no such assembly.</summary>
    UnknownAssembly,
    /// <summary>It leads to something that does not belong there.</summary>
    WrongType,
}
