using System.Text;
using Crossref.Core.Records;
using Crossref.Core.Storing;

namespace Crossref.Site.Recording;

/// <summary>A record that was formed and is not written yet.</summary>
/// <param name="Type">What it is.</param>
/// <param name="Id">Its id.</param>
/// <param name="File">The file it goes into, below the content folder.</param>
/// <param name="Text">What the file will say.</param>
/// <param name="IsKnown">Whether the library holds the very same record already, so that nothing is written.</param>
public sealed record NewRecord(RecordType Type, string Id, string File, string Text, bool IsKnown)
{
    internal byte[] Bytes => Encoding.UTF8.GetBytes(Text);

    internal FileChange Change => new(File, Bytes) { MustBeNew = true };
}
