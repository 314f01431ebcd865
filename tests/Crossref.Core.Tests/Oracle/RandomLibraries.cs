using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>The records of a library before they are frozen, so that some can be dropped.</summary>
internal sealed record Draft(LibraryRecord Card, IReadOnlyList<IRecord> Records)
{
    internal Library Freeze() => new(Card, Records);

    /// <summary>Every question that can be asked: each position, without a machine and in each machine in use.</summary>
    internal IEnumerable<(string Position, string? Machine)> Questions()
    {
        var machines = Records.OfType<Machine>().Where(m => !m.Retired).Select(m => (string?)m.Id).Prepend(null).ToList();
        foreach (var family in Records.OfType<Family>().Where(f => !f.Retired))
            foreach (var position in family.Assemblies.SelectMany(a => a.Positions))
                foreach (var machine in machines)
                    yield return (position.Address, machine);
    }
}

/// <summary>
/// Small crowded libraries: few parts and positions, many statements about them, values taken from short lists that
/// lie just below, at and above every threshold, so that each rule decides something often. Of five libraries one is
/// of everything; the others are about runs that prove, repairs, conditions that meet on a path, and long paths.
/// </summary>
internal sealed class RandomLibraries
{
    private static readonly Place Nowhere = new("random.yaml", 1, 1);
    private static readonly string[] Words = ["good", "ok", "sound", "undamaged", "clean", "dirty", "worn", "seized", "cracked", "worn"];
    private static readonly string?[] Serials = [null, "5", "10", "15", "20", "25", "K7", "k15", "K-2"];
    private const string Mill = "mill";
    private readonly Random _random;
    private readonly Theme _theme;
    private readonly List<IRecord> _records = [];
    private readonly List<Condition> _conditions = [];
    private string[] _parts = [];
    private string[] _sources = [];
    private string[] _families = [];
    private Position[] _positions = [];
    private Machine[] _machines = [];
    private readonly List<Repair> _repairs = [];

    private enum Theme { Everything, Runs, Repairs, Conditions, Chains }

    private RandomLibraries(int seed)
    {
        _random = new Random(seed);
        _theme = (Theme)(seed % 5);
    }

    /// <summary>The library of a seed: the same one each time.</summary>
    internal static Draft Of(int seed) => new RandomLibraries(seed).Make();

    private Draft Make()
    {
        for (var i = 0; i < 4; i++) _conditions.Add(SomeCondition());
        MakeSources();
        MakeParts();
        MakeFamilies();
        MakeMachines();
        if (Chance(On(Theme.Repairs, 100, _theme == Theme.Conditions ? 30 : 75))) MakeRepairs();
        MakeClaims();
        var card = new LibraryRecord
        {
            Id = "the-shop", Place = Nowhere, Title = "The shop", Mains = Pick<decimal?>(230, 230, 120, null),
            AcceptFrom = Pick(Basis.Seated, Basis.Seated, Basis.Told, Basis.Offered, Basis.Measured, Basis.Moulded, Basis.Ran, Basis.Proven, Basis.Documented),
            Confirmed = Chance(50) ? [To(_sources[2])] : [],
            Proving = new Proving(Pick(500, 1000), Pick(10, 100), Pick(0.25m, 0.5m), Pick(50, 100)),
        };
        return new Draft(card, _records);
    }

    private void MakeSources()
    {
        SourceType[] types =
        [
            Pick(SourceType.PartsList, SourceType.Manual, SourceType.Bulletin, SourceType.Standard),
            Pick(SourceType.Measurement, SourceType.Repair, SourceType.Seller, SourceType.Person, SourceType.Photo),
            Pick(Enum.GetValues<SourceType>()),
        ];
        _sources = [.. types.Select((_, i) => "source-" + (i + 1))];
        for (var i = 0; i < types.Length; i++)
            _records.Add(new Source { Id = _sources[i], Place = Nowhere, Kind = types[i], Title = "Source", Retired = i > 0 && Chance(10), From = i == 2 && Chance(40) ? Mill : null });
    }

    private void MakeParts()
    {
        var safe = Chance(20);
        PartKind[] kinds =
        [
            PartKind.Find("bearing")!,
            PartKind.Find(safe ? Pick("switch", "lamp") : Pick("gear", "spring", "claw"))!,
        ];
        _parts = [.. Enumerable.Range(1, _random.Next(On(Theme.Chains, 6, 4), _theme is Theme.Runs or Theme.Repairs ? 6 : 8)).Select(i => "part-" + i)];
        foreach (var id in _parts)
        {
            var next = Pick(_parts);
            var kind = Chance(70) ? kinds[0] : kinds[1];
            _records.Add(new Part
            {
                Id = id, Place = Nowhere, Kind = kind, Name = id, Source = SomeSource(),
                Sizes = SomeSizes(kind), Standard = kind.Name == "bearing" && Chance(15) ? Pick("6001-2RS", "6901ZZ", "6002/C3") : null,
                SupersededBy = next != id && Chance(40) ? To(next) : null, Safety = Chance(4), Retired = Chance(4),
                Life = Chance(On(Theme.Runs, 45, 65)) ? new Count(Pick(200, 600, 1000, 4000), SomeUnit()) : null,
            });
        }
    }

    // Mostly one of two parts of the kind, with a size left out, measured, or a little off: just below and above what is allowed.
    private IReadOnlyDictionary<string, Size> SomeSizes(PartKind kind)
    {
        if (!Chance(On(Theme.Chains, 60, 40)) || !Templates.TryGetValue(kind.Name, out var templates)) return Nothing.Sizes;
        var template = Chance(75) ? templates[0] : templates[1];
        var sizes = new Dictionary<string, Size>();
        var off = Chance(50) ? Pick(kind.Deciding.ToArray()) : "";
        foreach (var (attribute, text) in kind.Deciding.Zip(template))
        {
            if (attribute == off && Chance(50)) continue;
            sizes[attribute] = SizeName.Find(attribute)!.Measures is not { } dimension
                ? new Size(attribute == "shields" && text == "2Z" && Chance(40) ? "ZZ" : text, null)
                : Measured(decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture), dimension, attribute == off);
        }
        return sizes;
    }

    private Size Measured(decimal value, Dimension dimension, bool off)
    {
        var (uncertainty, shift) = off
            ? Pick<(decimal, decimal)>((0, 0.006m), (0, 0.01m), (0, 0.1m), (0, 0.15m), (0, 4), (0, 6), (0.02m, 0.02m), (0.02m, 0.03m), (0.1m, 0.14m), (0.1m, 0.17m), (0.3m, 0.35m), (0, 40))
            : Pick<(decimal, decimal)>((0, 0), (0, 0), (0, 0), (0.02m, 0), (0.1m, 0));
        return new Size("", new Quantity(value + shift, uncertainty, dimension));
    }

    private static readonly Dictionary<string, string[][]> Templates = new()
    {
        ["bearing"] = [["12", "28", "8", "none", "2RS", "CN", "110"], ["15", "32", "9", "none", "2Z", "CN", "110"]],
        ["gear"] = [["1", "32", "9", "0", "none", "20", "10"], ["1", "32", "9", "15", "left", "20", "10"]],
        ["spring"] = [["40", "2", "1.2"], ["25", "4", "1.2"]],
        ["lamp"] = [["230", "900", "210", "362", "blade"], ["120", "900", "210", "362", "blade"]],
    };

    private void MakeFamilies()
    {
        _families = [.. Enumerable.Range(1, _random.Next(2, 4)).Select(i => "family-" + i)];
        var positions = new List<Position>();
        foreach (var family in _families)
        {
            var retired = family != _families[0] && Chance(4);
            var assemblies = new List<Assembly>();
            var left = _random.Next(1, 4);
            while (left > 0)
            {
                var assembly = "unit-" + (assemblies.Count + 1);
                var here = Enumerable.Range(0, _random.Next(1, left + 1)).Select(i => new Position
                {
                    Id = "place-" + (left - i), Family = family, Assembly = assembly, Place = Nowhere, Name = "Place",
                    Kind = PartKind.Find(Chance(4) ? "board" : "bearing")!, Safety = Chance(6), Source = SomeSource(),
                    Listed = [.. Enumerable.Range(0, Pick(0, 1, 1, 2)).Select(_ => new Listing(To(Pick(_parts)), MaybeCondition(35)))],
                }).ToList();
                left -= here.Count;
                if (!retired) positions.AddRange(here);
                assemblies.Add(new Assembly { Id = assembly, Family = family, Name = "Unit", Place = Nowhere, Positions = here });
            }
            _records.Add(new Family
            {
                Id = family, Place = Nowhere, Name = family, Maker = "Ostrin", Retired = retired, Assemblies = assemblies,
                Models = [new Model("A", 230), new Model("B", 120), new Model("C", null)],
            });
        }
        _positions = [.. positions];
    }

    private void MakeMachines()
    {
        var machines = new List<Machine>();
        for (var i = _random.Next(1, On(Theme.Repairs, 3, 4)); i > 0; i--)
        {
            // The counter goes up, is set anew now and then, and is sometimes misread.
            var unit = Pick(CountUnit.Sheets, CountUnit.Sheets, CountUnit.Cycles, CountUnit.Hours);
            var value = 0m;
            var readings = new List<Reading>();
            for (var day = 1; day <= 28; day += _random.Next(On(Theme.Repairs, 0, 2), 8))
            {
                var reset = Chance(15);
                value = reset ? Pick(0, 100, 2000) : Math.Max(0, value + Pick(20, 60, 150, 500, 1500, -40));
                readings.Add(new Reading(Day(day), new Count(value, Chance(92) ? unit : SomeUnit()), Chance(12) ? "colour" : null, reset, Nowhere));
            }
            machines.Add(new Machine
            {
                Id = "machine-" + i, Place = Nowhere, Family = To(_families[Chance(60) ? 0 : _random.Next(_families.Length)]),
                Model = Pick("A", "B", "C", null), Serial = Pick(Serials), Mains = Chance(20) ? Pick(120, 230) : null,
                Readings = Chance(80) ? readings : [], Retired = Chance(4),
            });
        }
        _machines = [.. machines];
        _records.AddRange(machines);
    }

    private void MakeRepairs()
    {
        for (var i = _random.Next(1, On(Theme.Repairs, 11, 7)); i > 0; i--)
        {
            var machine = Pick(_machines);
            var bench = Chance(12);
            var places = _positions.Where(p => bench || p.Family == machine.Family.Id).ToArray();
            if (places.Length == 0) continue;
            var place = _theme == Theme.Repairs ? Favoured(places) : Pick(places);
            var day = _random.Next(1, 29);
            var before = machine.Readings.LastOrDefault(r => r.Date <= Day(day))?.Count ?? new Count(0, CountUnit.Sheets);
            var counter = Chance(85) ? new Count(before.Value + Pick(0, 10, 40, 120), Chance(92) ? before.Unit : SomeUnit()) : (Count?)null;
            var fitted = new List<Fitting>();
            if (Chance(75))
                fitted.Add(new Fitting(To(place.Address), To(Pick(_parts)), null, new Dictionary<string, string>(), Chance(15) ? "pin shortened" : null, null, Nowhere));
            var neighbour = Pick(places);
            if (neighbour.Address != place.Address && neighbour.Id != place.Id && Chance(35))
                fitted.Add(new Fitting(To(neighbour.Address), To(Pick(_parts)), null, new Dictionary<string, string>(), null, null, Nowhere));
            var elsewhere = Chance(12) ? Mill + ":" : "";
            var repair = new Repair
            {
                Id = elsewhere + "repair-" + i, Place = Nowhere, Machine = bench ? null : To(Chance(50) ? machine.Id : elsewhere + machine.Id), Unit = bench ? To(Pick("spare-1", "spare-2")) : null,
                Date = Chance(92) ? Day(day) : Pick(new PartialDate(2026, 2, 0), PartialDate.Unknown), Counter = counter, Fitted = fitted,
                Removed = Chance(55) ? [new Removal(To(place.Address), To(Pick(_parts)), null, Chance(55) ? Pick(Words) : null, null)] : [],
                Found = Chance(40) ? [new Finding(To(place.Address), Pick(Words), null)] : [],
                Swapped = Chance(On(Theme.Repairs, 25, 15)) ? new Swap(To(place.Family + "/" + Pick(places).Assembly), null, null) : null,
                NeighboursDamaged = Pick<bool?>(null, null, false, true), Retired = Chance(6),
            };
            _repairs.Add(repair);
            _records.Add(repair);
        }
    }

    private void MakeClaims()
    {
        var claims = new List<Claim>();
        var repairs = _repairs.SelectMany(r => r.Fitted.Select(f => (
            Id: r.Id + "/" + _positions.First(p => p.Address == f.Position.Id).Id, f.Part, f.Position))).ToList();
        // A few facts get most of the claims.
        var places = _positions.OrderBy(_ => _random.Next()).ToArray();
        var parts = _parts.OrderBy(_ => _random.Next()).ToArray();
        for (var i = _theme == Theme.Repairs ? _random.Next(6, 14) : _random.Next(6, 26); i > 0; i--)
        {
            var elsewhere = Chance(On(Theme.Runs, 25, 12)) ? Mill + ":" : "";
            var claim = new Claim
            {
                Id = elsewhere + "claim-" + (10 + i), Place = Nowhere, Part = To(Favoured(parts)), At = To(Favoured(places).Address),
                Verdict = Pick(Verdict.Fits, Verdict.Fits, Verdict.Fits, Verdict.Fits, Verdict.FitsWithChange, Verdict.DoesNotFit),
                Basis = Chance(On(Theme.Runs, 75, 40)) ? Basis.Ran : Pick(Basis.Documented, Basis.Documented, Basis.Seated, Basis.Moulded, Basis.Measured, Basis.Offered, Basis.Told),
                OnlyIf = MaybeCondition(On(Theme.Chains, 10, On(Theme.Conditions, 70, 40))), Machine = Chance(On(Theme.Runs, 85, 60)) ? To(elsewhere + Pick(_machines).Id) : null,
                NeighboursDamaged = Chance(On(Theme.Runs, 10, 20)) ? true : Pick<bool?>(null, false), Source = SomeSource(),
                Date = Chance(10) ? PartialDate.Unknown : Day(_random.Next(1, 6)), Retired = Chance(4),
            };
            if (claim.Verdict == Verdict.FitsWithChange) claim = claim with { Change = Pick("collar turned down", "pin shortened") };
            if (claim.Basis == Basis.Ran) claim = claim with { Run = SomeRun() };
            if (_repairs.Count > 0 && Chance(15)) claim = claim with { Source = To(Pick(_repairs.ToArray()).Id) };
            if (Chance(On(Theme.Chains, 85, 50)))
            {
                var other = Favoured(parts);
                if (other != claim.Part.Id)
                    claim = claim with
                    {
                        At = null, Replaces = To(other), BothWays = Chance(On(Theme.Chains, 10, 35)),
                        Where = Chance(On(Theme.Chains, 90, 50)) ? null : To(Chance(50) ? Pick(_families) : Pick(_positions).Address),
                    };
            }
            if (claims.Count > 0 && Chance(14))
            {
                var taken = Pick(claims.ToArray());
                if (Chance(40)) taken = claims.LastOrDefault(c => c.Withdraws is not null) ?? taken;
                claim = claim with
                {
                    Withdraws = To(taken.Id), Part = taken.Part, At = taken.At, Replaces = taken.Replaces, Where = taken.Where,
                    BothWays = taken.BothWays,
                };
            }
            else if (repairs.Count > 0 && Chance(6))
            {
                var (id, part, position) = Pick(repairs.ToArray());
                claim = claim with { Withdraws = To(id), Part = part, At = position, Replaces = null, Where = null, BothWays = false };
            }
            if (claim.Withdraws is not null && Chance(60)) claim = claim with { Verdict = null, Basis = null, Run = null, Change = null };
            claims.Add(claim);
            _records.Add(claim);
        }
    }

    private int On(Theme theme, int then, int otherwise) => _theme == theme ? then : otherwise;

    private Condition MaybeCondition(int percent) => Chance(percent) ? Favoured(_conditions.ToArray()) : Condition.None;

    private Condition SomeCondition()
    {
        var condition = Condition.None;
        if (Chance(On(Theme.Conditions, 35, 50))) condition = condition with { Models = Pick<string[]>(["A"], ["B"], ["C"], ["A", "B"], ["B", "A"], ["B", "C"]) };
        if (Chance(On(Theme.Conditions, 60, 40)))
        {
            var (from, to) = Pick<(string?, string?)>(("10", null), (null, "10"), ("15", null), (null, "15"), ("5", "15"), ("20", "25"), ("K10", null), ("k1", "K15"), (null, "K7"));
            condition = condition with { SerialFrom = from, SerialTo = to };
        }
        if (Chance(On(Theme.Conditions, 15, 40)) || condition.IsNone) condition = condition with { Mains = Pick(120, 230) };
        return condition;
    }

    private Count SomeRun()
    {
        var unit = SomeUnit();
        return new Count(
            unit == CountUnit.Hours ? Pick(1, 5, 10, 20, 60, 100, 300, 1000) : Pick(20, 50, 100, 150, 300, 500, 1000, 1200, 2000), unit);
    }

    private CountUnit SomeUnit() => Pick(CountUnit.Sheets, CountUnit.Sheets, CountUnit.Sheets, CountUnit.Cycles, CountUnit.Hours);

    private Ref? SomeSource() => Chance(12) ? null : To(Chance(50) ? _sources[0] : Pick(_sources));

    private static PartialDate Day(int day) => new(2026, 2, day);

    private static Ref To(string id) => new(id, Nowhere);

    private bool Chance(int percent) => _random.Next(100) < percent;

    private T Pick<T>(params T[] from) => from[_random.Next(from.Length)];

    // The smallest of two draws, or three: the first ones come up more often.
    private T Favoured<T>(T[] from)
    {
        var first = Math.Min(_random.Next(from.Length), _random.Next(from.Length));
        return from[_theme == Theme.Runs ? Math.Min(first, _random.Next(from.Length)) : first];
    }
}
