using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>One reference in a record.</summary>
/// <param name="From">The record that refers.</param>
/// <param name="To">What is written, and where.</param>
/// <param name="Target">What it may point at.</param>
internal readonly record struct Reference(IRecord From, Ref To, Target Target)
{
    internal bool MayBe(Target target) => (Target & target) != 0;
}
