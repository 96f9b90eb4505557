using System.Runtime.InteropServices;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds chains of two or three almost locked sets, cells with two candidates among them: for each candidate one with the fewest
/// cells. Kept for the thread's last board.
/// </summary>
internal sealed class SetChains
{
    private const int Costly = int.MaxValue;

    [ThreadStatic]
    private static SetChains? _ofThread;

    private readonly SetLinks _links = new();
    private readonly List<int> _path = [];
    private readonly List<(int Cells, int Single, int At)> _wanted = [];

    // The chains of those that are wanted, one after the other.
    private readonly List<int> _paths = [];

    // The way of each set to its true node: the fewest cells so far, and the nodes before it, false and true.
    private readonly (int Cells, int False, int True)[][] _levels = [[], [], []];
    private readonly List<int>[] _reached = [[], [], []];
    private ChainFinder _finder = null!;
    private Board? _board;

    /// <summary>Whether a chain with these ends and cells is left to an easier rule.</summary>
    internal delegate bool IsEasier(Board board, ChainGraph graph, (int First, int Last) ends, CellSet cells);

    private SetChains()
    {
    }

    /// <summary>The finder, with the board read.</summary>
    internal static SetChains For(Board board)
    {
        var chains = _ofThread ??= new();
        chains._finder = ChainFinder.For(board, ChainKind.SetsOnly);
        if (!ReferenceEquals(chains._board, board))
            chains.Read(board);
        return chains;
    }

    private ChainGraph Graph => _finder.Graph;

    /// <summary>
    /// Adds chains of so many sets, those with the fewest cells first, then by the first candidate that goes, until every
    /// candidate that goes by so many sets and no fewer goes by the fewest cells it can. Left out is what easier rules find: chains
    /// of up to three cells or of cells with two candidates that are as few, and subsets of a house.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="board">The board.</param>
    /// <param name="sets">2 or 3.</param>
    /// <param name="isEasier">Whether a chain is left to another rule too.</param>
    /// <param name="found">Where they go.</param>
    internal void Find(RuleId rule, Board board, int sets, IsEasier isEasier, Findings found)
    {
        Want(board, sets);
        var done = CandidateSet.Empty;
        foreach (var (_, single, at) in _wanted)
        {
            if (done.Contains(Graph.CandidateOf(single)))
                continue;
            _path.Clear();
            _path.AddRange(CollectionsMarshal.AsSpan(_paths).Slice(at, sets * 2));
            ChainPath.Turn(Graph, _path);
            var cells = ChainPath.CellsOf(Graph, _path);
            if (!cells.CommonHouses.IsEmpty || HasSetTwice() || ComesBack() || isEasier(board, Graph, (_path[0], _path[^1]), cells))
                continue;
            var chain = ChainPath.Deduce(rule, board, Graph, _path);
            done |= chain.Removes;
            foreach (var placed in chain.Places)
                done |= Graph.SeenBy(Graph.NodeOf(placed), Graph.NodeOf(placed));
            if (!found.Add(chain))
                return;
        }
    }

    private void Want(Board board, int sets)
    {
        _wanted.Clear();
        _paths.Clear();
        var ofCells = ChainFinder.For(board, ChainKind.BivalueCells).Depths;
        for (var single = 0; single < Graph.Singles; single++)
        {
            if (_finder.Depths[single] != sets)
                continue;
            var (cells, end) = Measure(single, sets);
            if (cells <= 3 || cells >= ofCells[single])
                continue;
            _wanted.Add((cells, single, _paths.Count));
            Trace(end, sets);
        }

        _wanted.Sort();
    }

    // Then that set and the one between are a ring.
    private bool HasSetTwice()
    {
        for (var at = 2; at < _path.Count; at += 2)
        {
            for (var before = 0; before < at; before += 2)
            {
                if (SetAt(before) == SetAt(at))
                    return true;
            }
        }

        return false;

        LockedSet SetAt(int at) => Graph.SetOf(Graph[_path[at]], Graph[_path[at + 1]]);
    }

    // To a node other than the end from which it started: then that node is true by the way back alone.
    private bool ComesBack()
    {
        for (var at = 1; at < _path.Count; at++)
        {
            var before = _path.IndexOf(_path[at]);
            if (before < at && (before > 0 || at < _path.Count - 1))
                return true;
        }

        return false;
    }

    private void Read(Board board)
    {
        _board = board;
        _links.Read(Graph);
        for (var level = 0; level < ChainFinder.MostSets; level++)
        {
            if (_levels[level].Length < Graph.Count)
                _levels[level] = new (int, int, int)[Graph.Count * 5 / 4];
            _levels[level].AsSpan().Fill((Costly, 0, 0));
            _reached[level].Clear();
        }
    }

    // The fewest cells of a chain of so many sets by which the candidate goes, and its end.
    private (int Cells, int End) Measure(int single, int sets)
    {
        for (var level = 0; level < ChainFinder.MostSets; level++)
        {
            foreach (var node in _reached[level])
                _levels[level][node] = (Costly, 0, 0);
            _reached[level].Clear();
        }

        var excluded = Graph.Excluded(single);
        foreach (var start in new SharedNodes(excluded, Graph.Linked))
            Link(0, start, from: -1, cells: 0);
        for (var level = 1; level < sets; level++)
        {
            foreach (var from in _reached[level - 1])
            {
                foreach (var next in new SharedNodes(Graph.Weak(from), Graph.Linked))
                {
                    if (level < sets - 1 || Graph.Strong(next).Overlaps(excluded)) // The last one has to end the chain.
                        Link(level, next, from, _levels[level - 1][from].Cells);
                }
            }
        }

        var fewest = (Cells: Costly, End: -1);
        foreach (var end in new SharedNodes(excluded, excluded))
        {
            if (_levels[sets - 1][end].Cells < fewest.Cells)
                fewest = (_levels[sets - 1][end].Cells, end);
        }

        return fewest;
    }

    private void Link(int level, int node, int from, int cells)
    {
        foreach (var (_, to, its, _) in _links.From(node))
        {
            ref var way = ref _levels[level][to];
            if (way.Cells == Costly)
                _reached[level].Add(to);
            if (cells + its < way.Cells)
                way = (cells + its, node, from);
        }
    }

    private void Trace(int end, int sets)
    {
        for (var level = sets - 1; level >= 0; level--)
        {
            _paths.Add(end);
            _paths.Add(_levels[level][end].False);
            end = _levels[level][end].True;
        }
    }
}
