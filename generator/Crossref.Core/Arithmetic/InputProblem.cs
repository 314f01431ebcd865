namespace Crossref.Core.Arithmetic;

/// <summary>Something written into a calculator that will not do.</summary>
/// <param name="Input">The input's name.</param>
/// <param name="Message">What is wrong and what to write instead.</param>
public sealed record InputProblem(string Input, string Message);
