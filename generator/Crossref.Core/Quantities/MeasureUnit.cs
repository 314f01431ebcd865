namespace Crossref.Core.Quantities;

/// <summary>A unit that may be written: how many of the dimension's own unit it is.</summary>
internal sealed record MeasureUnit(string Symbol, decimal Factor);
