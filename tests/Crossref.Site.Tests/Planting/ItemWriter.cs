using System.Text;

namespace Crossref.Site.Tests.Planting;

/// <summary>Writes items with every key in a line of its own, and notes the lines in them.</summary>
internal sealed class ItemWriter
{
    private readonly StringBuilder _text = new();
    private int _line = 1;

    internal string Text => _text.ToString();

    internal void Line(string text)
    {
        _text.Append(text).Append('\n');
        _line += text.Count(c => c == '\n') + 1;
    }

    internal void Document(Item root)
    {
        if (root.Keys is { } keys) Map(root, keys, "", afterDash: false);
        else Value(root, "");
    }

    private void Map(Item map, List<Entry> keys, string indent, bool afterDash)
    {
        map.Line = _line;
        foreach (var entry in keys)
        {
            if (!afterDash || entry != keys[0]) _text.Append(entry.Indent ?? indent);
            entry.Line = _line;
            _text.Append(entry.Key).Append(':');
            Value(entry.Value, indent);
        }
    }

    private void Value(Item value, string indent)
    {
        var before = value.Before.Length > 0 ? " " + value.Before : "";
        value.Line = _line;
        switch (value)
        {
            case { Raw: { } raw }:
                Line(raw.Length > 0 ? " " + raw : "");
                break;
            case { Rows: { Count: > 0 } rows }:
                Line(before);
                if (before.Length == 0) value.Line = _line;
                rows.ForEach(r => Row(r, indent + "  "));
                break;
            case { Keys: { Count: > 0 } keys }:
                Line(before);
                var anchored = value.Line;
                Map(value, keys, indent + "  ", afterDash: false);
                if (before.Length > 0) value.Line = anchored;
                break;
            default:
                Line(value.Rows is null ? " {}" : " []");
                break;
        }
    }

    private void Row(Item row, string indent)
    {
        row.Line = _line;
        _text.Append(indent).Append('-');
        if (row is { Before: "", Keys: { Count: > 0 } keys })
        {
            _text.Append(' ');
            Map(row, keys, indent + "  ", afterDash: true);
        }
        else
        {
            Value(row, indent);
        }
    }
}
