using System.Text;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>Files that are not what they should be, beside the sound ones.</summary>
internal static class FilePlants
{
    internal static IEnumerable<Plant> All(Bed bed)
    {
        yield return File(bed, "text for a record", "zz.yaml", "just some text\n", YamlCodes.NotAMap.Code, 1);
        yield return File(bed, "list for a record", "zz.yaml", "- part: x\n- part: y\n", YamlCodes.NotAMap.Code, 1);
        yield return File(bed, "nested too deep", "zz.yaml", "part: x\nname: " + new string('[', 40), YamlCodes.TooDeep.Code, 2);
        yield return File(bed, "instruction to the YAML reader", "zz.yaml", "%YAML 1.1\n---\npart: xx\nkind: other\nname: X\n", YamlCodes.Broken.Code, 1);
        yield return File(bed, "unknown type of record", "zz.yaml", "xyzzy-quux: x\nname: X\n", ShapeCodes.UnknownType.Code, 1);
        yield return File(bed, "type not first", "zz.yaml", "kind: other\npart: xx\nname: X\n", ShapeCodes.UnknownType.Code, 1);
        yield return File(bed, "note without front matter", "zz.md", "Some text.\n", NoteCodes.NoFrontMatter.Code, 1);
        yield return File(bed, "front matter not closed", "zz.md", "---\ntitle: A note\n", NoteCodes.NoFrontMatter.Code, 1);
        yield return File(bed, "name of a note", "Odd Name.md", "---\ntitle: A note\n---\nText.\n", ShapeCodes.BadId.Code, 0);
        yield return File(bed, "note without end", "zz.md", "---\ntitle: A note\n---\n" + string.Concat(Enumerable.Repeat("words and words\n", 4000)), NoteCodes.NoteTooDense.Code, 4);
        yield return File(bed, "UTF-16", "zz.yaml", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("part: x\n")).ToArray(), FileCodes.NotUtf8.Code, 1);
        yield return File(bed, "another character set", "zz.yaml", [.. "part: xx\nkind: other\nname: Gr\u00fcn\n".Select(c => (byte)c)], FileCodes.NotUtf8.Code, 3);
        yield return File(bed, "control character", "zz.yaml", "part: xx\nkind: other\nname: a\u0001b\n", FileCodes.ControlCharacter.Code, 3);
        yield return File(bed, "character that nobody sees", "zz.yaml", "part: xx\nkind: other\nname: a\u202Eb\n", FileCodes.HiddenCharacter.Code, 3);
        yield return File(bed, "file too large", "zz.yaml", "part: xx\nkind: other\nname: X\n" + new string('#', 1024 * 1024), FileCodes.TooLarge.Code, 0);
        var card = bed.Documents.Single(d => d.Shape.Name == "library");
        yield return new Plant("no library", $"{card}", () =>
        {
            var at = bed.Documents.IndexOf(card);
            bed.Documents.RemoveAt(at);
            return () => bed.Documents.Insert(at, card);
        }, () => new(FileCodes.NoLibrary.Code, ".", 0));
    }

    private static Plant File(Bed bed, string mistake, string path, string text, string code, int line) =>
        File(bed, mistake, path, Encoding.UTF8.GetBytes(text), code, line);

    private static Plant File(Bed bed, string mistake, string path, byte[] bytes, string code, int line) => new(mistake, path, () =>
    {
        bed.Other.Add(path, bytes);
        return () => bed.Other.Remove(path);
    }, () => new(code, path, line));
}
