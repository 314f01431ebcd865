using System.Text.RegularExpressions;
using Crossref.Core.Records;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Combining;

/// <summary>
/// Takes in the pictures that records show. A picture of a record below <c>from/</c> lies in that library's folder as
/// well, so that the record's text stays as it is; a picture that is here already is never replaced.
/// </summary>
internal sealed partial class PictureTaker(FolderTexts ours, FolderTexts theirs, Layout layout)
{
    // A picture for a page has less than a tenth of that.
    private const long Largest = 16 * 1024 * 1024;

    private readonly HashSet<string> _done = new(StringComparer.Ordinal);

    internal List<Decision> Decisions { get; } = [];

    /// <summary>Takes in what a record's text shows.</summary>
    /// <param name="text">The text.</param>
    /// <param name="theirFile">The file in which the record stands there.</param>
    /// <param name="ourFile">The file in which it stands here.</param>
    internal void Take(string text, string theirFile, string ourFile)
    {
        foreach (var path in Picture().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal))
        {
            var (there, here) = (Home(theirFile) + path, Home(ourFile) + path);
            if (!theirs.Folder.Files.ContainsKey(there) || !_done.Add(here)) continue;
            if (theirs.Folder.Files[there] > Largest)
            {
                Say(here, "it is over 16 MB and was left where it is");
                continue;
            }
            var bytes = Bytes(theirs, there);
            if (ours.Folder.Files.GetValueOrDefault(here, -1) == bytes.Length && Bytes(ours, here).AsSpan().SequenceEqual(bytes)) continue;
            if (ours.Folder.Files.ContainsKey(Layout.Beside(here, bytes))) continue;
            var name = layout.AddFile(here, bytes);
            Say(name, name == here ? "" : $"here {here} is another picture; look which of the two is meant");
        }
    }

    private void Say(string file, string why) => Decisions.Add(new Decision(CombineOutcome.Picture, RecordType.Note, file, file, [], why));

    private static string Home(string file) => file.StartsWith(Owner.Folder, StringComparison.Ordinal) ? string.Join('/', file.Split('/')[..2]) + "/" : "";

    private static byte[] Bytes(FolderTexts folder, string path)
    {
        using var stream = folder.Folder.OpenFile(path);
        var bytes = new byte[Math.Min(stream.Length, Largest)];
        stream.ReadExactly(bytes);
        return bytes;
    }

    [GeneratedRegex(@"[\w./-]+\.(png|jpe?g|webp|gif)(?!\w)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Picture();
}
