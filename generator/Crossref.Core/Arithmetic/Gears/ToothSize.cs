namespace Crossref.Core.Arithmetic.Gears;

/// <summary>A size in which teeth are made.</summary>
/// <param name="Name">"module 0.8" or "32 DP".</param>
/// <param name="Module">Its module in millimetres.</param>
/// <param name="From">Where it is laid down: "ISO 54, series I".</param>
public sealed record ToothSize(string Name, double Module, string From);
