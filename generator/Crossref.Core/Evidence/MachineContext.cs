using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>What is known about the machine that a question is asked for; nothing at all when none was named.</summary>
/// <param name="Model">Its model; null when unknown.</param>
/// <param name="Serial">Its serial; null when unknown.</param>
/// <param name="Mains">Its mains voltage in volts; null when unknown.</param>
public sealed record MachineContext(string? Model, string? Serial, decimal? Mains)
{
    /// <summary>No machine: every condition is unknown.</summary>
    public static MachineContext None { get; } = new(null, null, null);

    /// <summary>A machine of the library; its mains come from itself, else its model, else the library.</summary>
    public static MachineContext Of(Library library, Machine? machine) => machine is null
        ? None
        : new(machine.Model, machine.Serial, machine.Mains ?? library.ModelOf(machine)?.Mains ?? library.Card.Mains);
}
