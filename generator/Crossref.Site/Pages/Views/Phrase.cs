namespace Crossref.Site.Pages.Views;

/// <summary>A sentence with links in it.</summary>
public sealed record Phrase(IReadOnlyList<Link> Pieces)
{
    /// <summary>Plain text and links in the order they are read.</summary>
    internal static Phrase Of(params IEnumerable<object?> pieces) =>
        new([.. pieces.SelectMany(Flat)]);

    /// <summary>Links with a text between them.</summary>
    internal static Phrase Joined(string between, IEnumerable<Link> links) =>
        Of(links.SelectMany((link, i) => new object?[] { i > 0 ? between : null, link }));

    private static IEnumerable<Link> Flat(object? piece) => piece switch
    {
        null => [],
        Link link => [link],
        Phrase phrase => phrase.Pieces,
        _ => [new Link(null, piece.ToString() ?? "")],
    };

    internal string ToHtml() => string.Concat(Pieces.Select(p => p.ToHtml()));

    /// <inheritdoc/>
    public override string ToString() => string.Concat(Pieces.Select(p => p.Text));
}
