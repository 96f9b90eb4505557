namespace Companion.Engine.Tests.Rules;

/// <summary>
/// What follows from all candidates of a cell, or from all places of a digit in a house, by a chain from each; found by supposing
/// each candidate true, or false, and following chains. Nothing is shared with the rules.
/// </summary>
internal sealed class LiteralForcing
{
    private readonly LiteralGrid _grid;
    private readonly LiteralChainGraph _graph;
    private readonly LiteralSetGraph _sets;
    private readonly List<(List<int> Candidates, bool IsHouse)> _choices;

    public LiteralForcing(LiteralGrid grid)
    {
        (_grid, _sets) = (grid, new(grid));
        _graph = new(grid, LiteralLinks.Cells | LiteralLinks.Houses | LiteralLinks.WithinCells | LiteralLinks.Groups | LiteralLinks.Sets);
        _choices = [.. Cells().Concat(Houses()).Where(choice => choice.Candidates.Count > 2)];
    }

    /// <summary>The candidates that go by one chain with two ends, or by a blossom of sets.</summary>
    public List<LiteralNode> Easier => [.. Enumerable.Range(0, _graph.Candidates).Where(IsEasier).Select(candidate => _graph[candidate])];

    /// <summary>
    /// What follows, each with the fewest links of all the chains together, and whether they start from a house: a candidate that is
    /// placed, where anything goes by that which no single chain takes out, or one that goes.
    /// </summary>
    public IEnumerable<(LiteralNode Single, bool Places, int Links, bool FromHouse)> Conclusions()
    {
        foreach (var single in Enumerable.Range(0, _graph.Candidates).Where(candidate => !IsEasier(candidate)))
        {
            foreach (var places in new[] { false, true })
            {
                if (places && _graph.ExcludedBy(single).TrueForAll(other => _graph.ShortestWalk(other) is not null))
                    continue;
                if (_graph.FalseWhere(single, holds: !places) is { } isFalse && Best(isFalse) is { } best)
                    yield return (_graph[single], places, best.Links, best.FromHouse);
            }
        }
    }

    // The choice with the fewest links, a cell rather than a house; none where each candidate excludes the conclusion by itself.
    private (int Links, bool FromHouse)? Best(Dictionary<int, int> isFalse) => _choices
        .Where(choice => choice.Candidates.TrueForAll(isFalse.ContainsKey))
        .Select(choice => (Links: choice.Candidates.Sum(candidate => isFalse[candidate]), choice.IsHouse, choice.Candidates.Count))
        .OrderBy(choice => (choice.Links, choice.IsHouse))
        .Take(1)
        .Where(choice => choice.Links > choice.Count)
        .Select(choice => ((int, bool)?)(choice.Links, choice.IsHouse))
        .FirstOrDefault();

    private bool IsEasier(int candidate) =>
        _graph.ShortestWalk(candidate) is not null || _sets.LinksOfBlossom(_graph[candidate]) is not null;

    private IEnumerable<(List<int> Candidates, bool IsHouse)> Cells() =>
        LiteralGrid.AllCells.Select(cell => (Standing(node => node.Cells[0] == cell), false));

    private IEnumerable<(List<int> Candidates, bool IsHouse)> Houses() =>
        from house in LiteralGrid.Houses
        from digit in Enumerable.Range(1, 9)
        let places = _grid.Places(house, digit)
        select (Standing(node => node.Digit == digit && places.Contains(node.Cells[0])), true);

    private List<int> Standing(Predicate<LiteralNode> which) =>
        [.. Enumerable.Range(0, _graph.Candidates).Where(candidate => which(_graph[candidate]))];
}
