using System.Security.Cryptography;
using System.Text;
using Crossref.Core.Records;

namespace Crossref.Site.Sharing.Texts;

/// <summary>A record as it is written, and whose it is.</summary>
/// <param name="Type">What it is.</param>
/// <param name="Id">Its id, as written.</param>
/// <param name="Owner">The library whose folder it lies in: this one's, or that of <c>from/</c>.</param>
/// <param name="Text">Its text with plain line feeds, without blank lines at its end; it ends with a line feed.</param>
/// <param name="File">The file it stands in.</param>
/// <param name="Number">Which of the file's documents it is, from 0.</param>
internal sealed record RecordText(RecordType Type, string Id, string Owner, string Text, FileText File, int Number)
{
    /// <summary>Whether it belongs to the shop that made it, rather than to everybody.</summary>
    internal bool IsShop => Core.Records.Owner.IsShop(Type);

    /// <summary>The name by which every copy of it is known: a shop's records carry their owner's.</summary>
    internal string Name => IsShop ? Core.Records.Owner.Address(Owner, Id) : Id;

    /// <summary>The text taken apart.</summary>
    internal Outline Outline => OutlineOf(Type, Text);

    /// <summary>A text of that type taken apart.</summary>
    internal static Outline OutlineOf(RecordType type, string text) => type == RecordType.Note ? OutlineReader.Note(text) : OutlineReader.Record(text);

    /// <summary>The text without what nobody sees: blanks at the ends of lines and of the text.</summary>
    internal static string Plain(string text) => string.Join('\n', text.Split('\n').Select(l => l.TrimEnd())).TrimEnd();

    /// <summary>The hash of a text and of what was known when it was written.</summary>
    internal static string Hash(string text, IEnumerable<string> known) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Plain(text) + "\0" + string.Join(' ', known))))[..20];
}
