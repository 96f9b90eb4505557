using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>
/// The nodes of a board and their links as the definitions say, and chains among them found by going through all of them. Nothing
/// is shared with the rules.
/// </summary>
internal sealed class LiteralChainGraph
{
    private readonly List<LiteralNode> _nodes = [];
    private readonly Dictionary<string, int> _indices = [];
    private readonly List<int>[] _weak;
    private readonly List<int>[] _strong;

    // What goes where a node is true, whether or not chains of these links go on there.
    private readonly List<int>[] _excluded;

    public LiteralChainGraph(LiteralGrid grid, LiteralLinks links)
    {
        foreach (var cell in LiteralGrid.AllCells)
            _nodes.AddRange(grid.Candidates(cell).Select(digit => new LiteralNode(digit, [cell])));
        Candidates = _nodes.Count;
        var pairs = new List<(LiteralNode, LiteralNode)>();
        if (links.HasFlag(LiteralLinks.Cells))
            pairs.AddRange(PairsInCells(grid));
        if (links.HasFlag(LiteralLinks.Houses))
            pairs.AddRange(PairsInHouses(grid, links.HasFlag(LiteralLinks.Groups)));
        if (links.HasFlag(LiteralLinks.Sets))
            pairs.AddRange(PairsInSets(grid));
        if (links.HasFlag(LiteralLinks.Fish))
            pairs.AddRange(PairsInFish(LiteralGrid.Rows, LiteralGrid.Columns, grid).Concat(PairsInFish(LiteralGrid.Columns, LiteralGrid.Rows, grid)));
        var ends = pairs.ConvertAll(pair => (One: IndexOf(pair.Item1), Other: IndexOf(pair.Item2)));
        var others = ends.Concat(ends.ConvertAll(pair => (One: pair.Other, Other: pair.One))).ToLookup(pair => pair.One, pair => pair.Other);
        _strong = [.. Enumerable.Range(0, _nodes.Count).Select(node => others[node].Distinct().ToList())];
        _excluded = [.. _nodes.Select(node => Excluded(node, withinCells: true))];
        _weak = links.HasFlag(LiteralLinks.WithinCells) ? _excluded : [.. _nodes.Select(node => Excluded(node, withinCells: false))];
    }

    /// <summary>How many of the nodes, the first, are candidates.</summary>
    public int Candidates { get; }

    public LiteralNode this[int node] => _nodes[node];

    /// <summary>The fewest strong links of a chain by which a candidate goes, of those that come to no node twice.</summary>
    public int? Shortest(int candidate, int most) =>
        Fewest(most, links => _excluded[candidate].Exists(first => Reaches(first, _excluded[candidate], links, [])));

    /// <summary>The same of chains that may come to a node twice.</summary>
    public int? ShortestWalk(int candidate) => LevelOf(_excluded[candidate], _excluded[candidate].Contains);

    /// <summary>The fewest strong links of a loop by which a candidate goes, of those that come to no node twice.</summary>
    public int? ShortestLoop(int candidate, int most) => Fewest(most, links => _excluded[candidate].Exists(first =>
        Reaches(first, _excluded[candidate].FindAll(_weak[first].Contains), links, [])));

    /// <summary>The same of loops that may come to a node twice.</summary>
    public int? ShortestLoopWalk(int candidate) => _excluded[candidate]
        .Select(first => LevelOf([first], node => _excluded[candidate].Contains(node) && _weak[first].Contains(node)))
        .Min();

    /// <summary>The candidates that cannot stand beside this one.</summary>
    public List<int> ExcludedBy(int candidate) => _excluded[candidate].FindAll(node => node < Candidates);

    /// <summary>
    /// What is false along chains where a candidate is supposed to be true, or false, with the fewest links to each; null where what
    /// was supposed to be false turns out to be true.
    /// </summary>
    public Dictionary<int, int>? FalseWhere(int candidate, bool holds)
    {
        var (isFalse, isTrue) = (new Dictionary<int, int>(), new HashSet<int>());
        List<int> level = holds ? _excluded[candidate] : [candidate];
        for (var links = holds ? 1 : 0; level.Count > 0; links += 2)
        {
            level.ForEach(node => isFalse.TryAdd(node, links));
            var next = level.SelectMany(node => _strong[node]).Where(isTrue.Add).ToList();
            level = [.. next.SelectMany(node => _weak[node]).Distinct()];
        }

        return !holds && isTrue.Contains(candidate) ? null : isFalse;
    }

    private List<int> Excluded(LiteralNode node, bool withinCells) =>
        [.. Enumerable.Range(0, _nodes.Count).Where(other => node.Excludes(_nodes[other], withinCells))];

    private static int? Fewest(int most, Predicate<int> holds) =>
        Enumerable.Range(1, most).Where(links => holds(links)).Select(links => (int?)links).FirstOrDefault();

    // Whether a chain of exactly so many strong links leads from a false node to one of the goals, true. It may end where it begins.
    private bool Reaches(int from, List<int> goals, int links, List<int> path)
    {
        if (path.Contains(from))
            return false;
        path.Add(from);
        var reaches = _strong[from].Exists(to => links == 1
            ? goals.Contains(to) && path.IndexOf(to) <= 0
            : !path.Contains(to) && GoesOn(to, goals, links - 1, path));
        path.RemoveAt(path.Count - 1);
        return reaches;
    }

    private bool GoesOn(int from, List<int> goals, int links, List<int> path)
    {
        path.Add(from);
        var reaches = _weak[from].Exists(next => Reaches(next, goals, links, path));
        path.RemoveAt(path.Count - 1);
        return reaches;
    }

    // After how many strong links a walk that starts with these nodes false first comes to such a node.
    private int? LevelOf(List<int> falseFirst, Predicate<int> isGoal)
    {
        var seen = new HashSet<int>();
        var level = falseFirst.SelectMany(node => _strong[node]).Where(seen.Add).ToList();
        for (var links = 1; level.Count > 0; links++)
        {
            if (level.Exists(isGoal))
                return links;
            level = level.SelectMany(node => _weak[node]).SelectMany(node => _strong[node]).Where(seen.Add).ToList();
        }

        return null;
    }

    private int IndexOf(LiteralNode node)
    {
        if (_indices.Count == 0)
            _nodes.ForEach(single => _indices.Add(Key(single), _indices.Count));
        if (_indices.TryAdd(Key(node), _nodes.Count))
            _nodes.Add(node);
        return _indices[Key(node)];

        static string Key(LiteralNode node) => $"{node.Digit} {string.Join(' ', node.Cells.Order())}";
    }

    private static IEnumerable<(LiteralNode, LiteralNode)> PairsInCells(LiteralGrid grid) =>
        from cell in LiteralGrid.AllCells
        let digits = grid.Candidates(cell)
        where digits.Count == 2
        select (new LiteralNode(digits[0], [cell]), new LiteralNode(digits[1], [cell]));

    // A digit stands in the set where another one does not.
    private static IEnumerable<(LiteralNode, LiteralNode)> PairsInSets(LiteralGrid grid) =>
        from set in LiteralSet.All(grid)
        where set.Cells.Count > 1
        from pair in Combinations(set.Digits, 2)
        select (set.Node(pair[0], grid), set.Node(pair[1], grid));

    // The places of a digit in two lines, but for up to three, lie in two lines across, and each of the two has some there: so without
    // those each line across has one of its places.
    private static IEnumerable<(LiteralNode, LiteralNode)> PairsInFish(List<LiteralHouse> lines, List<LiteralHouse> across, LiteralGrid grid) =>
        from digit in Enumerable.Range(1, 9)
        from bases in Combinations(lines, 2)
        let places = bases.ConvertAll(line => grid.Places(line, digit))
        where places.TrueForAll(its => its.Count > 1)
        from covers in Combinations(across, 2)
        let fin = places.SelectMany(its => its).Where(cell => !covers.Exists(cover => cover.Has(cell))).ToList()
        let met = covers.ConvertAll(cover => places.SelectMany(its => its).Where(cover.Has).ToList())
        where fin.Count is >= 1 and <= 3 && met.TrueForAll(its => its.Count > 0) && places.TrueForAll(its => its.Except(fin).Any())
        from cells in met
        select (new LiteralNode(digit, fin), new LiteralNode(digit, cells));

    private static IEnumerable<(LiteralNode, LiteralNode)> PairsInHouses(LiteralGrid grid, bool groups) =>
        from house in LiteralGrid.Houses
        from digit in Enumerable.Range(1, 9)
        let places = grid.Places(house, digit)
        from pair in Halves(places, groups)
        select (new LiteralNode(digit, pair.One), new LiteralNode(digit, pair.Other));

    // All ways to see the places as two nodes: single ones, or groups that lie in a block and a line.
    private static IEnumerable<(List<Place> One, List<Place> Other)> Halves(List<Place> places, bool groups)
    {
        if (places.Count == 2)
            yield return ([places[0]], [places[1]]);
        if (places.Count < 3 || !groups || IsGroup(places))
            yield break;
        for (var size = 1; size <= places.Count / 2; size++)
        {
            foreach (var one in Combinations(places, size))
            {
                var other = places.Except(one).ToList();
                if (IsGroup(one) && IsGroup(other))
                    yield return (one, other);
            }
        }
    }

    private static bool IsGroup(List<Place> cells) =>
        cells.Count == 1
        || (LiteralGrid.Blocks.Exists(block => cells.TrueForAll(block.Has)) && LiteralGrid.Lines.Exists(line => cells.TrueForAll(line.Has)));
}
