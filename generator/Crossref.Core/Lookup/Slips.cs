namespace Crossref.Core.Lookup;

/// <summary>Recognises a single slip of the keys.</summary>
internal static class Slips
{
    /// <summary>Shorter pieces are not looked up with a slip: nearly everything would be one away.</summary>
    public const int Shortest = 4;

    /// <summary>What slip leads from a number to what was typed.</summary>
    public static Slip Between(string typed, string number)
    {
        var least = Math.Min(typed.Length, number.Length);
        var front = 0;
        while (front < least && typed[front] == number[front])
        {
            front++;
        }

        var back = 0;
        while (back < least - front && typed[^(back + 1)] == number[^(back + 1)])
        {
            back++;
        }

        var typedRest = typed.Length - front - back;
        var numberRest = number.Length - front - back;
        return (typedRest, numberRest) switch
        {
            (1, 1) => Slip.Other,
            (0, 1) => Slip.Missing,
            (1, 0) => Slip.Extra,
            (2, 2) when typed[front] == number[front + 1] && typed[front + 1] == number[front] => Slip.Swapped,
            _ => Slip.None,
        };
    }
}
