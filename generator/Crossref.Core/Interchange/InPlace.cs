using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>What is known to be in a place of one machine or unit.</summary>
/// <param name="Part">The part's id; null when the place is known to be empty.</param>
/// <param name="Since">When a repair left it so; unknown when the unit's own record says it.</param>
public sealed record InPlace(string? Part, PartialDate Since)
{
    /// <summary>What the records say of a place; null when they say nothing, so that it holds what the maker put there.</summary>
    /// <param name="library">The records.</param>
    /// <param name="holder">The machine or unit.</param>
    /// <param name="position">The place.</param>
    public static InPlace? Of(Library library, string holder, Position position)
    {
        foreach (var repair in library.Repairs.Values.Where(r => !r.Retired).OrderByDescending(r => r.Date).ThenByDescending(r => r.Id, StringComparer.Ordinal))
        {
            if (repair.Machine?.Id == holder || repair.Unit?.Id == holder)
            {
                if (repair.Fitted.LastOrDefault(f => f.Position.Id == position.Address) is { } fitted) return new InPlace(fitted.Part.Id, repair.Date);
                if (repair.Removed.Any(r => r.Position.Id == position.Address && (r.Quantity ?? position.Quantity) >= position.Quantity)) return new InPlace(null, repair.Date);
                if (repair is { Machine: not null, Swapped: { } swap } && swap.Assembly.Id == $"{position.Family}/{position.Assembly}") return swap.In is { } unit ? Of(library, unit.Id, position) : null;
            }
            else if (repair.Fitted.Any(f => f.From?.Id == holder && f.Position.Id == position.Address)) return new InPlace(null, repair.Date);
            else if (repair.Removed.LastOrDefault(r => r.To?.Id == holder && r.Position.Id == position.Address) is { } moved) return new InPlace(moved.Part.Id, repair.Date);
        }
        return library.Units.GetValueOrDefault(holder)?.Missing.Any(m => m.Id == position.Address) == true ? new InPlace(null, PartialDate.Unknown) : null;
    }
}
