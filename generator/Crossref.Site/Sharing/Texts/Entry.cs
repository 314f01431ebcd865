namespace Crossref.Site.Sharing.Texts;

/// <summary>
/// One key or list item of a record as it is written. <see cref="Key"/> begins with a sign: <c>=</c> a key with its
/// value, <c>&gt;</c> a key with keys or items below it, <c>-</c> a list item with keys below it, <c>*</c> a list item on its own.
/// </summary>
/// <param name="Key">What it is called among its neighbours.</param>
/// <param name="Lead">The comments and blank lines before it, as they are.</param>
/// <param name="Text">Its own lines, without the indentation of the first.</param>
/// <param name="Indent">How far <paramref name="Children"/> stand further in than it.</param>
/// <param name="Children">What is below it.</param>
internal sealed record Entry(string Key, string Lead, string Text, int Indent, IReadOnlyList<Entry> Children);
