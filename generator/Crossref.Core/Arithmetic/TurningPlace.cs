namespace Crossref.Core.Arithmetic;

/// <summary>A position that turns against the sheet, and how far the sheet goes in one turn.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Name">What to call it: "Pressure roller, Tarrock T40 presses".</param>
/// <param name="Family">The family's id.</param>
/// <param name="Around">Once around it, in millimetres.</param>
/// <param name="Because">What that was worked out from: "30 mm across, on record".</param>
public sealed record TurningPlace(string Position, string Name, string Family, Interval Around, string Because);
