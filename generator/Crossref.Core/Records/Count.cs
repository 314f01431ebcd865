using System.Globalization;

namespace Crossref.Core.Records;

/// <summary>A counter reading, a run or a life. Never negative.</summary>
public readonly record struct Count(decimal Value, CountUnit Unit)
{
    /// <summary>"18,000 sheets".</summary>
    public override string ToString() =>
        Value.ToString("#,0.##", CultureInfo.InvariantCulture) + " " + Words.Of(Unit);
}
