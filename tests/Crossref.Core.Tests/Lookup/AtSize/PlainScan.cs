using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>
/// Which entries a number answers for, told by looking at every number of the library in turn. It shares no code with
/// the index: normal forms and slips are worked out here in another way.
/// </summary>
public sealed class PlainScan(IReadOnlyList<LookupEntry> entries)
{
    private readonly (LookupEntry Entry, string Form)[] _numbers =
        [.. entries.SelectMany(entry => entry.Numbers.Select(number => (entry, Form(number.Text))))];

    private readonly ILookup<string, LookupEntry> _ids = entries.ToLookup(entry => Form(entry.Id));

    /// <summary>Capitals, no separators, and one sign for each of the signs that look alike.</summary>
    public static string Form(string number) => string.Concat(number.Where(char.IsAsciiLetterOrDigit))
        .ToUpperInvariant().Replace('O', '0').Replace('I', '1').Replace('L', '1');

    /// <summary>Entries with just this number or id.</summary>
    public IEnumerable<LookupEntry> Exact(string form) => With(number => number == form).Concat(_ids[form]);

    /// <summary>Entries with a number that starts so.</summary>
    public IEnumerable<LookupEntry> Starting(string form) => With(number => number.StartsWith(form, StringComparison.Ordinal));

    /// <summary>Entries with a number that has this anywhere.</summary>
    public IEnumerable<LookupEntry> Containing(string form) => With(number => number.Contains(form, StringComparison.Ordinal));

    /// <summary>Entries with a number from which one slip leads to this: one of its variants is the number.</summary>
    public IEnumerable<LookupEntry> OneSlip(string form)
    {
        var variants = Variants(form).ToHashSet();
        variants.Remove(form);
        return With(variants.Contains);
    }

    private IEnumerable<LookupEntry> With(Func<string, bool> answers) => _numbers.Where(number => answers(number.Form)).Select(number => number.Entry);

    private static IEnumerable<string> Variants(string form)
    {
        const string signs = "0123456789ABCDEFGHJKMNPQRSTUVWXYZ";
        for (var at = 0; at <= form.Length; at++)
        {
            var (front, back) = (form[..at], form[at..]);
            foreach (var sign in signs)
            {
                yield return front + sign + back;
                if (back.Length > 0)
                {
                    yield return front + sign + back[1..];
                }
            }

            if (back.Length > 0)
            {
                yield return front + back[1..];
            }

            if (back.Length > 1)
            {
                yield return front + back[1] + back[0] + back[2..];
            }
        }
    }
}
