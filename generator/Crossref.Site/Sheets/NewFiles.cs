using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Recording;

namespace Crossref.Site.Sheets;

/// <summary>The text of new records, in as few files as are read, and which cell each of their lines came from.</summary>
internal sealed class NewFiles
{
    private readonly Dictionary<string, (byte[] Bytes, IReadOnlyList<Place> Lines)> _files = new(StringComparer.Ordinal);

    internal NewFiles(IEnumerable<MapNode> records, string folder, DateOnly date)
    {
        var (text, lines) = (new StringBuilder(), new List<Place>());
        var files = new List<(string Text, List<Place> Lines)>();
        foreach (var record in records)
        {
            if (text.Length > TextFile.Largest / 4)
            {
                // A character takes up to three bytes, and one record is far smaller than what is left.
                files.Add((text.ToString(), lines));
                (text, lines) = (new StringBuilder(), []);
            }
            if (text.Length > 0) Add("---\n", record.Place);
            foreach (var entry in record.Entries) Add(YamlText.Write(new MapNode(default, [entry])), entry.Place);
        }
        if (text.Length > 0) files.Add((text.ToString(), lines));
        var hash = Fingerprint(string.Concat(files.Select(f => f.Text)));
        for (var i = 0; i < files.Count; i++)
        {
            var number = files.Count == 1 ? "" : FormattableString.Invariant($"-{i + 1}");
            _files.Add(string.Create(CultureInfo.InvariantCulture, $"{folder}/imported-{date:yyyy-MM-dd}-{hash}{number}.yaml"), (Encoding.UTF8.GetBytes(files[i].Text), files[i].Lines));
        }

        void Add(string piece, Place from)
        {
            text.Append(piece);
            lines.AddRange(Enumerable.Repeat(from, piece.Count(c => c == '\n')));
        }
    }

    internal IReadOnlyDictionary<string, byte[]> Bytes => _files.ToDictionary(f => f.Key, f => f.Value.Bytes, StringComparer.Ordinal);

    /// <summary>A diagnostic about one of these files, as one about the sheet.</summary>
    internal Diagnostic InSheet(Diagnostic diagnostic)
    {
        if (_files.Count == 0) return diagnostic;
        var message = Regex.Replace(diagnostic.Message, $"({string.Join('|', _files.Keys.Select(Regex.Escape))}):([0-9]+):[0-9]+",
            m => Cell(m.Groups[1].Value, int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture)).ToString(), RegexOptions.CultureInvariant);
        return diagnostic with { Message = message, Place = _files.ContainsKey(diagnostic.Place.File) ? Cell(diagnostic.Place.File, diagnostic.Place.Line) : diagnostic.Place };
    }

    /// <summary>Eight letters and digits that follow from a text.</summary>
    internal static string Fingerprint(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..8];

    private Place Cell(string file, int line) => _files[file].Lines[Math.Max(line, 1) - 1];
}
