using System.Text;

namespace Crossref.Site.Sharing.Texts;

/// <summary>
/// The exact text of a file in pieces, one for each document, so that one can be replaced and all else stays to the byte.
/// </summary>
internal sealed class FileText
{
    private readonly List<Piece> _pieces = [];
    private readonly string _mark;

    private FileText(string path, string text)
    {
        Path = path;
        _mark = text.StartsWith('\uFEFF') ? "\uFEFF" : "";
        LineEnd = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        Text = text[_mark.Length..];
    }

    /// <summary>The path below the content folder.</summary>
    internal string Path { get; }

    /// <summary>Every document: its text with plain line feeds, and how many lines stand before it.</summary>
    internal IEnumerable<(string Text, int LinesBefore)> Documents
    {
        get
        {
            var lines = 0;
            foreach (var piece in _pieces)
            {
                lines += LinesIn(piece.Before);
                yield return (piece.Plain, lines);
                lines += LinesIn(piece.Exact) + LinesIn(piece.Behind);
            }
        }
    }

    private string LineEnd { get; }

    private string Text { get; }

    /// <summary>A YAML file, cut at its lines of dashes.</summary>
    internal static FileText OfRecords(string path, byte[] bytes)
    {
        var file = new FileText(path, Encoding.UTF8.GetString(bytes));
        var (start, body) = (0, 0);
        for (var at = 0; at < file.Text.Length;)
        {
            var end = file.Text.AsSpan(at).IndexOfAny('\r', '\n');
            end = end < 0 ? file.Text.Length : at + end + (file.Text.AsSpan(at + end).StartsWith("\r\n") ? 2 : 1);
            var line = file.Text[at..end];
            if (line.StartsWith("---", StringComparison.Ordinal) && (line.Length == 3 || line[3] is ' ' or '\t' or '\r' or '\n'))
            {
                if (at > 0) file.Add(start, body, at);
                // What a line of dashes says behind them is part of the document, unless it is a remark on the line.
                var rest = line[3..].TrimStart();
                (start, body) = (at, rest.Length == 0 || rest[0] == '#' ? end : at + 3);
            }
            at = end;
        }
        file.Add(start, body, file.Text.Length);
        return file;
    }

    /// <summary>A note: one document, the whole file.</summary>
    internal static FileText OfNote(string path, byte[] bytes)
    {
        var file = new FileText(path, Encoding.UTF8.GetString(bytes));
        file.Add(0, 0, file.Text.Length);
        return file;
    }

    /// <summary>The file with other documents in place of some, and more behind its last.</summary>
    internal byte[] With(IReadOnlyDictionary<int, string> replaced, IEnumerable<string> added)
    {
        var text = new StringBuilder(_mark);
        for (var i = 0; i < _pieces.Count; i++)
        {
            var piece = _pieces[i];
            text.Append(piece.Before).Append(replaced.TryGetValue(i, out var other) ? Ended(other).TrimEnd('\r', '\n') + piece.Behind : piece.Exact + piece.Behind);
        }
        foreach (var document in added)
        {
            if (text.Length > _mark.Length && text[^1] is not ('\n' or '\r')) text.Append(LineEnd);
            if (text.Length > _mark.Length) text.Append("---").Append(LineEnd);
            text.Append(Ended(document));
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static int LinesIn(string text) => Feeds(text).Count(c => c == '\n');

    private static string Feeds(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    private string Ended(string text) => text.Replace("\n", LineEnd, StringComparison.Ordinal);

    private void Add(int start, int body, int end)
    {
        var exact = Text[body..end];
        var trimmed = exact.TrimEnd();
        _pieces.Add(new Piece(Text[start..body], trimmed, exact[trimmed.Length..]));
    }

    // The line of dashes before a document, its text, and the blanks behind it.
    private sealed record Piece(string Before, string Exact, string Behind)
    {
        internal string Plain => Exact.Length == 0 ? "" : Feeds(Exact) + "\n";
    }
}
