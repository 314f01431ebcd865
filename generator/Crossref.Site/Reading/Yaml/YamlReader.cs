using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Crossref.Site.Reading.Yaml;

/// <summary>Reads text into trees with places. Anchors, aliases and tags are refused; every scalar stays text.</summary>
internal sealed class YamlReader
{
    /// <summary>Levels of lists and maps that a document may have.</summary>
    internal const int DeepestLevel = 32;

    private readonly string _file;
    private readonly int _linesBefore;
    private readonly DiagnosticLog _log;
    private readonly Parser _parser;

    private YamlReader(string file, string text, int linesBefore, DiagnosticLog log)
    {
        (_file, _linesBefore, _log) = (file, linesBefore, log);
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>Every document of a file. Documents that hold nothing but comments are left out.</summary>
    internal static IEnumerable<YamlDocument> Read(string file, string text, DiagnosticLog log) =>
        DocumentSplitter.Split(text).SelectMany(d => new YamlReader(file, d.Text, d.LinesBefore, log).Documents(d.Text));

    private List<YamlDocument> Documents(string text)
    {
        var documents = new List<YamlDocument>();
        try
        {
            // Between the documents stand their own start and end, which say nothing here.
            for (var next = Next(); next is not StreamEnd; next = Next())
            {
                if (next is NodeEvent && Value(next, 0) is not ScalarNode { Text: "" } and var root) documents.Add(new YamlDocument(text, root));
            }
        }
        catch (TooDeepException e)
        {
            _log.Add(YamlCodes.TooDeep, e.Place, $"more than {DeepestLevel} levels of lists and maps", "write a flatter record; none needs more than six");
            documents.Add(new YamlDocument(text, null));
        }
        catch (YamlException e)
        {
            var (code, message, hint, line, column) = BrokenYaml.Explain(text, (int)e.Start.Line, (int)e.Start.Column);
            _log.Add(code, new Place(_file, line + _linesBefore, column), message, hint);
            documents.Add(new YamlDocument(text, null));
        }
        return documents;
    }

    private ParsingEvent Next()
    {
        var last = _parser.Current?.End ?? Mark.Empty;
        try
        {
            _parser.MoveNext();
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException)
        {
            // On some unclosed brackets, and on escapes of half a character, the parser trips instead of saying so.
            throw new YamlException(last, last, e.Message, e);
        }
        return _parser.Current!;
    }

    private Node Value(ParsingEvent start, int level)
    {
        var place = PlaceOf(start.Start);
        if (level > DeepestLevel) throw new TooDeepException(place);
        Refuse(start, place);
        return start switch
        {
            Scalar scalar when _log.AddHidden(scalar.Value, place, "remove it; text in double quotes may hold one behind a \\") => new RefusedNode(place),
            Scalar scalar => new ScalarNode(place, scalar.Value),
            SequenceStart => List(place, level),
            MappingStart => Map(place, level),
            _ => new RefusedNode(place),
        };
    }

    private ListNode List(Place place, int level)
    {
        var items = new List<Node>();
        for (var next = Next(); next is not SequenceEnd; next = Next()) items.Add(Value(next, level + 1));
        return new ListNode(place, items);
    }

    private MapNode Map(Place place, int level)
    {
        var entries = new List<MapEntry>();
        var places = new Dictionary<string, Place>(StringComparer.Ordinal);
        for (var next = Next(); next is not MappingEnd; next = Next())
        {
            var key = Value(next, level + 1);
            var value = Value(Next(), level + 1);
            if (key is ScalarNode { Text: var name })
            {
                if (places.TryAdd(name, key.Place)) entries.Add(new MapEntry(name, key.Place, value));
                else _log.Add(YamlCodes.RepeatedKey, key.Place, $"'{ScalarChecker.Shown(name)}' is written twice in the same place, first in line {places[name].Line}", "keep one of them, or make it a list if both are meant");
            }
            else if (key is not RefusedNode)
            {
                _log.Add(YamlCodes.OddKey, key.Place, $"a key must be a word, this is {key.Form}", "write key: value; text with brackets or braces needs quotes");
            }
        }
        return new MapNode(place, entries);
    }

    private void Refuse(ParsingEvent next, Place place)
    {
        if (next is AnchorAlias alias)
            _log.Add(YamlCodes.Alias, place, $"'*{alias.Value}' is an alias", "write the value itself; text that begins with * needs quotes");
        else if (next is NodeEvent { Anchor.IsEmpty: false } anchored)
            _log.Add(YamlCodes.Alias, place, $"'&{anchored.Anchor.Value}' is an anchor", "leave it out and write the value where it is needed; text that begins with & needs quotes");
        else if (next is NodeEvent { Tag.IsEmpty: false } tagged)
            _log.Add(YamlCodes.Tag, place, $"'{tagged.Tag.Value}' is a tag", "leave it out, every value is read as text first; text that begins with ! needs quotes");
    }

    private Place PlaceOf(Mark mark) => new(_file, (int)mark.Line + _linesBefore, (int)mark.Column);

    private sealed class TooDeepException(Place place) : Exception
    {
        internal Place Place { get; } = place;
    }
}
