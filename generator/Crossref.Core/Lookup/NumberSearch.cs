namespace Crossref.Core.Lookup;

/// <summary>Finds entries by a number or a piece of one.</summary>
internal sealed class NumberSearch(TableReader numbers, TableReader reversed, TableReader inner)
{
    /// <summary>
    /// The entries with a number that is, starts with or contains a form. They are met in the order of their rank,
    /// so that the first <paramref name="limit"/> are the best.
    /// </summary>
    /// <param name="form">A normal form, not empty.</param>
    /// <param name="typed">What was typed, for the reason.</param>
    /// <param name="allowed">The entries to choose from; all when null.</param>
    /// <param name="limit">How many are enough.</param>
    public Dictionary<int, NumberMatch> Find(string form, string typed, bool[]? allowed, int limit)
    {
        var found = new Dictionary<int, NumberMatch>();
        Collect(numbers, form, Starting, found, allowed, limit);
        if (form.Length >= IndexFormat.ShortestInner && found.Count < limit)
        {
            Collect(inner, form, (_, _) => LookupTier.Middle, found, allowed, limit);
        }

        return found;

        int Starting(string key, NumberRole role) =>
            key.Length == form.Length ? LookupTier.ExactFor(role)
            : role == NumberRole.Id ? 0
            : LookupTier.Prefix;

        void Collect(
            TableReader table,
            string start,
            Func<string, NumberRole, int> tierOf,
            Dictionary<int, NumberMatch> into,
            bool[]? from,
            int enough)
        {
            var walked = 0;
            table.Walk(start, row =>
            {
                foreach (var posting in PostingCoder.Decode(row.Value))
                {
                    walked++;
                    var role = (NumberRole)posting.Level;
                    var tier = tierOf(row.Key, role);
                    if (tier > 0 && (from is null || from[posting.Entry]))
                    {
                        into.TryAdd(posting.Entry, new NumberMatch(tier, row.Key, role, form, typed));
                        if (into.Count >= enough)
                        {
                            return false;
                        }
                    }
                }

                return walked < SearchBudget.Walk;
            });
        }
    }

    /// <summary>
    /// The entries with a number one slip away from a form. A slip leaves one half of the form whole, unless it
    /// swaps the two characters in the middle; so the first half is looked up forwards, the second backwards.
    /// </summary>
    public Dictionary<int, NumberMatch> FindSlips(string form, string typed, bool[]? allowed)
    {
        var found = new Dictionary<int, NumberMatch>();
        if (form.Length < Slips.Shortest)
        {
            return found;
        }

        var half = form.Length / 2;
        numbers.Walk(form[..half], Visit(key => key));
        reversed.Walk(NumberTables.Reverse(form[half..]), Visit(NumberTables.Reverse));
        var swapped = string.Concat(
            form.AsSpan(0, half - 1), [form[half], form[half - 1]], form.AsSpan(half + 1));
        numbers.WalkKey(swapped, Visit(key => key));
        return found;

        Func<Row, bool> Visit(Func<string, string> numberOf)
        {
            var walked = 0;
            return row =>
            {
                if (Math.Abs(row.Key.Length - form.Length) <= 1)
                {
                    var number = numberOf(row.Key);
                    if (Slips.Between(form, number) != Slip.None)
                    {
                        Keep(number, row.Value);
                    }
                }

                return ++walked < SearchBudget.Walk;
            };
        }

        void Keep(string number, string postings)
        {
            foreach (var posting in PostingCoder.Decode(postings))
            {
                var role = (NumberRole)posting.Level;
                if (role == NumberRole.Id || (allowed is not null && !allowed[posting.Entry]))
                {
                    continue;
                }

                var match = new NumberMatch(LookupTier.Typo, number, role, form, typed);
                if (!found.TryGetValue(posting.Entry, out var before) || match.CompareTo(before) < 0)
                {
                    found[posting.Entry] = match;
                }
            }
        }
    }
}
