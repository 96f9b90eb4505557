using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// What follows from two choices that cannot both be met where only one candidate can be true, by a chain from each of their other
/// candidates; found by supposing each candidate true, or false, and going through all such pairs. Nothing is shared with the rules.
/// </summary>
internal sealed class LiteralJointForcing
{
    private readonly LiteralGrid _grid;
    private readonly LiteralChainGraph _graph;

    // The candidates from which chains start, and those of the two that cannot both be true.
    private readonly List<(List<int> Starts, List<int> Shared)> _pairs;

    public LiteralJointForcing(LiteralGrid grid)
    {
        _grid = grid;
        _graph = new(
            grid,
            LiteralLinks.Cells | LiteralLinks.Houses | LiteralLinks.WithinCells | LiteralLinks.Groups | LiteralLinks.Sets | LiteralLinks.Fish);
        var exclusive = Cells().Concat(Houses()).ToList();
        var choices = exclusive.FindAll(choice => choice.Count > 2);
        _pairs = [.. exclusive.SelectMany(one => Pairs(one, choices))];
    }

    /// <summary>
    /// What follows by at most so many links, and with how few: a candidate that is placed, or one that goes.
    /// </summary>
    public IEnumerable<(LiteralNode Single, bool Places, int Links)> Conclusions(int most)
    {
        foreach (var single in Enumerable.Range(0, _graph.Candidates))
        {
            foreach (var places in new[] { false, true })
            {
                // What refutes itself goes by one chain.
                if (_graph.FalseWhere(single, holds: !places) is not { } isFalse || (!places && isFalse.ContainsKey(single)))
                    continue;
                var fewest = _pairs
                    .Where(pair => pair.Starts.TrueForAll(isFalse.ContainsKey) && !pair.Shared.Contains(single))
                    .Select(pair => (Links: pair.Starts.Sum(start => isFalse[start]), pair.Starts.Count))
                    .Where(pair => pair.Links > pair.Count && pair.Links <= most)
                    .Select(pair => pair.Links)
                    .DefaultIfEmpty(0)
                    .Min();
                if (fewest > 0)
                    yield return (_graph[single], places, fewest);
            }
        }
    }

    // The pairs of choices that cannot both be met by these candidates, of which only one can be true.
    private static IEnumerable<(List<int> Starts, List<int> Shared)> Pairs(List<int> exclusive, List<List<int>> choices) =>
        from pair in Combinations(choices.FindAll(choice => choice.Intersect(exclusive).Any() && choice.Except(exclusive).Any()), 2)
        let shared = pair.ConvertAll(choice => choice.Intersect(exclusive).ToList())
        where !shared[0].Intersect(shared[1]).Any()
        select (pair.SelectMany(choice => choice.Except(exclusive)).Distinct().ToList(), shared.SelectMany(its => its).ToList());

    private IEnumerable<List<int>> Cells() => LiteralGrid.AllCells.Select(cell => Standing(node => node.Cells[0] == cell));

    private IEnumerable<List<int>> Houses() =>
        from house in LiteralGrid.Houses
        from digit in Enumerable.Range(1, 9)
        let places = _grid.Places(house, digit)
        select Standing(node => node.Digit == digit && places.Contains(node.Cells[0]));

    private List<int> Standing(Predicate<LiteralNode> which) =>
        [.. Enumerable.Range(0, _graph.Candidates).Where(candidate => which(_graph[candidate]))];
}
