using System.Text;
using System.Text.Unicode;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Files;

/// <summary>Reads one file as text, or says why it is not text.</summary>
internal static class TextFile
{
    /// <summary>Bytes above which a file of records is refused.</summary>
    internal const long Largest = 1024 * 1024;

    private const string HiddenHint = "delete it, with what stands around it, and type that anew; if there are many, the file is damaged or is not text";

    /// <summary>
    /// The text with plain line feeds and without a byte order mark; null when the file was refused, and then
    /// <paramref name="guess"/> holds what can be made out of it.
    /// </summary>
    internal static string? Read(ContentFolder folder, string path, DiagnosticLog log, out string guess)
    {
        guess = "";
        byte[] bytes;
        try
        {
            using var stream = folder.OpenFile(path);
            bytes = new byte[Math.Min(stream.Length, 16 * Largest)];
            stream.ReadExactly(bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            log.Add(FileCodes.Unreadable, new Place(path, 0, 0), "this file cannot be read", "check who may read it, and whether the stick is still there");
            return null;
        }
        var content = bytes.AsSpan(bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0);
        guess = Lines(Encoding.UTF8.GetString(content));
        if (folder.Files[path] > Largest)
        {
            log.Add(FileCodes.TooLarge, new Place(path, 0, 0), "this file is over 1 MB", "split it into several files; any number is read");
            return null;
        }
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            log.Add(FileCodes.NotUtf8, new Place(path, 1, 1), "this file is UTF-16", "save it again as UTF-8");
            return null;
        }
        if (!Utf8.IsValid(content))
        {
            log.Add(FileCodes.NotUtf8, EndOf(path, content[..ValidLength(content)]), "from here on this file is not UTF-8", "save it again as UTF-8");
            return null;
        }
        var hidden = HiddenCharacters.IndexIn(guess);
        if (hidden >= 0 && log.AddHidden(guess, EndOf(path, guess[..hidden]), HiddenHint)) return null;
        return guess;
    }

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    private static int ValidLength(ReadOnlySpan<byte> content)
    {
        var length = 0;
        while (Rune.DecodeFromUtf8(content[length..], out _, out var consumed) == System.Buffers.OperationStatus.Done) length += consumed;
        return length;
    }

    private static Place EndOf(string path, ReadOnlySpan<byte> before) => EndOf(path, Lines(Encoding.UTF8.GetString(before)));

    private static Place EndOf(string path, string before) =>
        new(path, before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n'));
}
