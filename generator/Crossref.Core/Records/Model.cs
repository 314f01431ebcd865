namespace Crossref.Core.Records;

/// <summary>One model of a family and the mains voltage it is built for, in volts.</summary>
public sealed record Model(string Name, decimal? Mains);
