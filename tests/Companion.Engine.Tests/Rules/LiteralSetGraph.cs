namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>
/// The almost locked sets of a board, and what goes by chains, rings and blossoms of them, found by going through all. Nothing is
/// shared with the rules.
/// </summary>
internal sealed class LiteralSetGraph
{
    private readonly LiteralGrid _grid;
    private readonly List<LiteralSet> _sets;

    // By set and digit: the digit in the set, and the sets that lack the digit where this one holds it.
    private readonly Dictionary<(int Set, int Digit), LiteralNode> _nodes = [];
    private readonly Dictionary<(int Set, int Digit), List<int>> _linked = [];

    // By candidate: the sets that lack a digit where it is true, with that digit.
    private readonly Dictionary<(Place Cell, int Digit), HashSet<(int Set, int Digit)>> _excluded = [];

    public LiteralSetGraph(LiteralGrid grid)
    {
        (_grid, _sets) = (grid, LiteralSet.All(grid));
        for (var set = 0; set < _sets.Count; set++)
        {
            foreach (var digit in _sets[set].Digits)
                _nodes[(set, digit)] = _sets[set].Node(digit, grid);
        }

        foreach (var ((set, digit), node) in _nodes)
        {
            _linked[(set, digit)] = [.. Enumerable.Range(0, _sets.Count).Where(other =>
                other != set && _nodes.TryGetValue((other, digit), out var its) && node.Excludes(its, withinCells: false))];
        }

        foreach (var single in Standing())
        {
            _excluded[(single.Cells[0], single.Digit)] =
                [.. _nodes.Where(node => single.Excludes(node.Value, withinCells: true)).Select(node => node.Key)];
        }
    }

    /// <summary>The digits that can stand in one of the two sets only.</summary>
    public static List<int> Links(LiteralSet one, LiteralSet other, LiteralGrid grid) =>
        [.. one.Digits.Intersect(other.Digits).Where(digit => one.Node(digit, grid).Excludes(other.Node(digit, grid), withinCells: false))];

    /// <summary>The fewest sets of a chain by which the candidate goes, up to three.</summary>
    public int? FewestSets(LiteralNode single)
    {
        var excluded = ExcludedBy(single);
        var reached = excluded.ToList(); // The sets that lack a digit where the candidate is true.
        for (var sets = 1; sets <= 3; sets++)
        {
            if (reached.Exists(lack => _sets[lack.Set].Digits.Exists(digit => digit != lack.Digit && excluded.Contains((lack.Set, digit)))))
                return sets;
            reached = [.. reached.SelectMany(Next).Distinct()];
        }

        return null;

        IEnumerable<(int Set, int Digit)> Next((int Set, int Digit) lack) =>
            from digit in _sets[lack.Set].Digits
            where digit != lack.Digit
            from next in _linked[(lack.Set, digit)]
            select (next, digit);
    }

    /// <summary>The chains of so many sets by which the candidate goes that have the fewest cells.</summary>
    public List<List<LiteralSet>> WithFewestCells(LiteralNode single, int sets)
    {
        var excluded = ExcludedBy(single);
        return excluded
            .SelectMany(first => Extend([first.Set], first.Digit, excluded, sets))
            .Select(chain => chain.ConvertAll(set => _sets[set]))
            .GroupBy(chain => chain.Sum(set => set.Cells.Count))
            .MinBy(same => same.Key)!
            .ToList();
    }

    /// <summary>The candidates that go by rings of two sets.</summary>
    public List<LiteralNode> GoByRing()
    {
        var goes = new Dictionary<string, LiteralNode>();
        foreach (var (one, other) in Rings())
        {
            List<LiteralSet> pair = [_sets[one], _sets[other]];
            if (LiteralGrid.Houses.Exists(house => pair.TrueForAll(set => set.Cells.TrueForAll(house.Has))))
                continue;
            foreach (var links in Literal.Combinations(Links(pair[0], pair[1], _grid), 2))
            {
                // A link has places in both sets, any other digit in its own.
                var nodes = links.ConvertAll(link => Both(pair, link));
                nodes.AddRange(pair.SelectMany(set => set.Digits.Except(links).Select(digit => set.Node(digit, _grid))));
                foreach (var single in Standing().Where(single => nodes.Exists(node => single.Excludes(node, withinCells: false))))
                    goes.TryAdd($"{single.Cells[0]} {single.Digit}", single);
            }
        }

        return [.. goes.Values];
    }

    /// <summary>The fewest links of a blossom by which the candidate goes.</summary>
    public int? LinksOfBlossom(LiteralNode single) => LiteralGrid.AllCells
        .Where(stem => _grid.Candidates(stem).Count > 2)
        .Select(stem => _grid.Candidates(stem).ConvertAll(digit => LinksTo(new(digit, [stem]), single)))
        .Where(petals => petals.TrueForAll(links => links is not null) && petals.Exists(links => links > 1))
        .Min(petals => petals.Sum());

    // One link where the two exclude each other, three where a set stands between them.
    private int? LinksTo(LiteralNode petal, LiteralNode single)
    {
        if (petal.Excludes(single, withinCells: true))
            return 1;
        var lacking = ExcludedBy(petal);
        return ExcludedBy(single).Any(mine => lacking.Any(its => its.Set == mine.Set && its.Digit != mine.Digit)) ? 3 : null;
    }

    // The pairs of sets with two links or more.
    private IEnumerable<(int One, int Other)> Rings() =>
        from one in Enumerable.Range(0, _sets.Count)
        from same in _sets[one].Digits.SelectMany(digit => _linked[(one, digit)]).Where(other => other > one).GroupBy(other => other)
        where same.Count() > 1
        select (one, same.Key);

    private LiteralNode Both(List<LiteralSet> pair, int digit) =>
        new(digit, [.. pair[0].Node(digit, _grid).Cells, .. pair[1].Node(digit, _grid).Cells]);

    private HashSet<(int Set, int Digit)> ExcludedBy(LiteralNode single) => _excluded[(single.Cells[0], single.Digit)];

    // The last set of the chain lacks this digit if the candidate is true, and so holds its others.
    private IEnumerable<List<int>> Extend(List<int> chain, int lacks, HashSet<(int Set, int Digit)> excluded, int sets)
    {
        foreach (var digit in _sets[chain[^1]].Digits.Where(digit => digit != lacks))
        {
            if (chain.Count == sets)
            {
                if (excluded.Contains((chain[^1], digit)))
                    yield return chain;
                continue;
            }

            foreach (var longer in _linked[(chain[^1], digit)].SelectMany(next => Extend([.. chain, next], digit, excluded, sets)))
                yield return longer;
        }
    }

    private IEnumerable<LiteralNode> Standing() =>
        LiteralGrid.AllCells.SelectMany(cell => _grid.Candidates(cell).Select(digit => new LiteralNode(digit, [cell])));
}
