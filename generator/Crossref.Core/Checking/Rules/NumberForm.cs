namespace Crossref.Core.Checking.Rules;

/// <summary>Part numbers as one compares them.</summary>
public static class NumberForm
{
    /// <summary>Capitals and digits only: dashes, spaces, dots and slashes are written by one and left out by another.</summary>
    public static string Of(string number) => string.Concat(number.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
