using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>A part that a repair put into a machine and that is still in it, as far as the repairs say.</summary>
/// <param name="Repair">The repair.</param>
/// <param name="Fitting">What it fitted.</param>
public sealed record OpenFitting(Repair Repair, Fitting Fitting)
{
    /// <summary>The id under which the fitting counts as evidence.</summary>
    public string ClaimId => $"{Repair.Id}/{Fitting.Position.Id[(Fitting.Position.Id.LastIndexOf('/') + 1)..]}";
}
