using System.Numerics;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// A walk over a graph in which each step is one weak and one strong link, level by level: the nodes that are true after one
/// strong link, after two, and so on. Breadth first, so that a node is met on a shortest way.
/// </summary>
internal sealed class ChainWalk
{
    // Far more than it ever took on the way through hard puzzles (two thousand).
    private const int MostSteps = 100_000;

    private ChainGraph _graph = null!;
    private ulong[] _visited = [];
    private ulong[] _fresh = [];
    private int[] _order = [];
    private readonly List<int> _levels = [];
    private int _end;
    private int _steps;

    /// <summary>How many strong links the walk has gone.</summary>
    internal int Level => _levels.Count;

    /// <summary>Whether the last level has no node.</summary>
    internal bool IsOver => _levels[^1] == _end;

    /// <summary>The nodes first met on the last level.</summary>
    internal ReadOnlySpan<ulong> Fresh => _fresh.AsSpan(0, _graph.Words);

    /// <summary>The nodes of a level, 1 for the first.</summary>
    internal ReadOnlySpan<int> At(int level) =>
        _order.AsSpan(_levels[level - 1], (level < _levels.Count ? _levels[level] : _end) - _levels[level - 1]);

    /// <summary>Starts with these nodes as the first level.</summary>
    internal void Begin(ChainGraph graph, ReadOnlySpan<ulong> first)
    {
        _graph = graph;
        if (_order.Length < graph.Count)
            (_order, _visited, _fresh) = (new int[graph.Count * 5 / 4], new ulong[graph.Words * 2], new ulong[graph.Words * 2]);
        _visited.AsSpan(0, graph.Words).Clear();
        _levels.Clear();
        _end = 0;
        first.CopyTo(_fresh);
        Enter();
    }

    /// <summary>Goes to the next level.</summary>
    internal void Advance()
    {
        var fresh = _fresh.AsSpan(0, _graph.Words);
        fresh.Clear();
        foreach (var node in At(Level))
            fresh.Add(_graph.Step(node));
        Enter();
    }

    /// <summary>
    /// Finds a way to the last level that comes to no node twice, but for an end that may be both ends. All are tried, in the order
    /// of the nodes.
    /// </summary>
    /// <param name="starts">The nodes with which the way may start, false.</param>
    /// <param name="ends">The nodes of the last level in which it may end, true.</param>
    /// <param name="path">The nodes of the way, two for each strong link, from its end back to its start.</param>
    /// <returns>Whether there is one.</returns>
    internal bool Trace(ReadOnlySpan<ulong> starts, ReadOnlySpan<ulong> ends, List<int> path)
    {
        path.Clear();
        _steps = 0;
        foreach (var end in At(Level))
        {
            if (ends.Has(end) && Back(end, Level, starts, path))
                return true;
        }

        return false;
    }

    // Goes back from a true node to the false one that makes it true, and on to a true one that makes that false.
    private bool Back(int node, int level, ReadOnlySpan<ulong> starts, List<int> path)
    {
        if (++_steps > MostSteps)
            return false;
        path.Add(node);
        if (level == 1 ? BackToStart(node, starts, path) : BackOver(node, level, starts, path))
            return true;
        path.RemoveAt(path.Count - 1);
        return false;
    }

    private bool BackToStart(int node, ReadOnlySpan<ulong> starts, List<int> path)
    {
        foreach (var start in new SharedNodes(starts, _graph.Strong(node)))
        {
            if (path.IndexOf(start, 1) >= 0)
                continue;
            path.Add(start);
            return true;
        }

        return false;
    }

    private bool BackOver(int node, int level, ReadOnlySpan<ulong> starts, List<int> path)
    {
        foreach (var from in At(level - 1))
        {
            if (!_graph.Step(from).Has(node) || path.Contains(from))
                continue;
            foreach (var between in new SharedNodes(_graph.Weak(from), _graph.Strong(node)))
            {
                if (path.Contains(between))
                    continue;
                path.Add(between);
                if (Back(from, level - 1, starts, path))
                    return true;
                path.RemoveAt(path.Count - 1);
            }
        }

        return false;
    }

    private void Enter()
    {
        _levels.Add(_end);
        for (var word = 0; word < _graph.Words; word++)
        {
            _fresh[word] &= ~_visited[word];
            _visited[word] |= _fresh[word];
            for (var rest = _fresh[word]; rest != 0; rest &= rest - 1)
                _order[_end++] = word << 6 | BitOperations.TrailingZeroCount(rest);
        }
    }
}
