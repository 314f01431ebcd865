namespace Crossref.Site.Tests.Hostile;

/// <summary>Text that somebody may have put on a stick to do harm.</summary>
internal static class HostileText
{
    /// <summary>Shown as it is. None holds a digit behind letters alone, which would change how serials compare.</summary>
    internal static IReadOnlyList<string> Shown { get; } =
    [
        "<script>globalThis.canary = 1</script>",
        "<img src=x onerror=\"globalThis.canary = 1\">",
        "\"><svg onload=globalThis.canary=1>",
        "' autofocus onfocus='globalThis.canary = 1",
        "\" style=\"position:fixed\" onmouseover=\"globalThis.canary = 1",
        "</title></script></style></textarea><!-- --!> -->]]><![CDATA[",
        "&lt;b&gt; &amp; &#60;i&#62; &#x3c;u&#x3e; &quot; &NewLine;",
        "{{ 7 * 6 }} {%- include 'layout.html' -%} {{ page | object.eval }} <% x %> ${7*6} #{7*6} @(7*6)",
        "\\\");globalThis.canary=1;// \\u003cscript\\u003e \\x3c '+globalThis.canary+'",
        "javascript:globalThis.canary=1//",
        "https://outside.invalid/x?y=z",
        "//outside.invalid/x",
        "data:text/html,<script>parent.canary=1</script>",
        "[link](javascript:globalThis.canary=1) ![i](https://outside.invalid/i.png) <https://outside.invalid/>",
        "<a href='jAvAsCrIpT:globalThis.canary=1'>x</a><base href=//outside.invalid/><form action=//outside.invalid/>",
        "Z\u0300\u0301\u0302\u0303\u0304\u0305\u0306\u0307\u0308 \U0001F527 \uFF1Cscript\uFF1E \u02BA \u0130\u0131\u212A \u05D0\u05D1",
        new('W', 12_000),
        new('<', 3_000),
    ];

    /// <summary>Refused in every value: controls.</summary>
    internal static IReadOnlyList<string> Broken { get; } = ["\0", "\u0007", "\b", "\u001B[31mred", "\u001B]8;;x\u0007", "\u007F", "\u0085", "\u009B31m"];

    /// <summary>Halves of characters, which only an escape can bring in.</summary>
    internal static IReadOnlyList<string> Halves { get; } = ["\uD800", "\uDC00x", "\uDC00\uD800"];

    /// <summary>Refused in every value: what turns the direction of writing round, and what has no width.</summary>
    internal static IReadOnlyList<string> Hidden { get; } =
    [
        .. Range(0x202A, 0x202E), .. Range(0x2066, 0x2069), .. Range(0x200E, 0x200F), "\u061C", "\u200B", "\u2060", "\uFEFF", "\u00AD", "\u2028", "\u2029", "\U000E0041",
    ];

    /// <summary>Refused where a text is compared to the character, allowed where words of some scripts need it.</summary>
    internal static IReadOnlyList<string> Joiners { get; } = ["\u200C", "\u200D"];

    private static IEnumerable<string> Range(int first, int last) => Enumerable.Range(first, last - first + 1).Select(c => ((char)c).ToString());
}
