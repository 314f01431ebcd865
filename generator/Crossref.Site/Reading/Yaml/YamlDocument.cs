namespace Crossref.Site.Reading.Yaml;

/// <summary>One document of a file; its tree is null when it could not be followed.</summary>
/// <param name="Text">The document's own text, from which ids can still be guessed when there is no tree.</param>
/// <param name="Root">The tree.</param>
internal sealed record YamlDocument(string Text, Node? Root);
