using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>Finds what repairs fitted that nothing has ended yet; a later counter of the machine counts for it.</summary>
public static class OpenFittings
{
    /// <summary>Those of a machine whose part is not listed for its position, so that the repair is evidence; oldest first.</summary>
    public static IReadOnlyList<OpenFitting> Of(Library library, string machine)
    {
        var repairs = library.Repairs.Values.Where(r => !r.Retired && r.Machine?.Id == machine).OrderBy(r => r.Date).ThenBy(r => r.Id, StringComparer.Ordinal).ToList();
        return
        [
            .. from i in Enumerable.Range(0, repairs.Count)
               from fitting in repairs[i].Fitted
               let position = library.Positions.GetValueOrDefault(fitting.Position.Id)
               where position is not null && position.Listed.All(l => l.Part.Id != fitting.Part.Id) && !repairs.Skip(i + 1).Any(r => Ends(r, position))
               select new OpenFitting(repairs[i], fitting),
        ];
    }

    /// <summary>Whether a repair ends the run of whatever was in a position.</summary>
    internal static bool Ends(Repair repair, Position position) =>
        repair.Removed.Any(r => r.Position.Id == position.Address) ||
        repair.Fitted.Any(f => f.Position.Id == position.Address) ||
        repair.Swapped?.Assembly.Id == $"{position.Family}/{position.Assembly}";
}
