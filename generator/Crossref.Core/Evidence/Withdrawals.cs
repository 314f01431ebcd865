using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>Which claims were taken back. A claim is out while a claim that withdraws it is not out itself.</summary>
public sealed class Withdrawals
{
    private readonly Dictionary<string, List<string>> _withdrawers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> _stands = new(StringComparer.Ordinal);

    internal Withdrawals(Library library)
    {
        foreach (var claim in library.Claims.Values.OrderBy(c => c.Id, StringComparer.Ordinal))
        {
            // Nobody takes back what another library said.
            if (claim.Retired || claim.Withdraws is not { } target || Owner.Of(target.Id) != Owner.Of(claim.Id)) continue;
            if (!_withdrawers.TryGetValue(target.Id, out var list)) _withdrawers[target.Id] = list = [];
            list.Add(claim.Id);
        }
        foreach (var id in _withdrawers.Keys.Concat(library.Claims.Keys)) Decide(id);
    }

    /// <summary>Whether the claim of that id, or what a repair shows under that id, still counts.</summary>
    public bool Stands(string id) => _stands.GetValueOrDefault(id, true);

    /// <summary>The claims that take this one back, whether or not they stand themselves.</summary>
    public IReadOnlyList<string> WithdrawnBy(string id) => _withdrawers.GetValueOrDefault(id) ?? [];

    // A long chain of withdrawals must not exhaust the stack, and a cycle (an error that the checks report) must end.
    private void Decide(string first)
    {
        var open = new Stack<string>([first]);
        var opened = new HashSet<string>(StringComparer.Ordinal);
        while (open.TryPeek(out var id))
        {
            var next = opened.Add(id) ? WithdrawnBy(id).Where(w => !_stands.ContainsKey(w) && !opened.Contains(w)).ToList() : [];
            next.ForEach(open.Push);
            if (next.Count > 0) continue;
            open.Pop();
            _stands.TryAdd(id, !WithdrawnBy(id).Any(w => _stands.GetValueOrDefault(w)));
        }
    }
}
