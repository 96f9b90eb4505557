using System.Numerics;

namespace Companion.Engine.Rules.Chains;

/// <summary>Sets of candidates as rows of bits over the nodes of a graph, where candidates come first. Made again in the same memory.</summary>
internal sealed class CandidateRows
{
    private readonly List<int> _firsts = []; // Of each set: most are told apart by it.
    private ulong[] _rows = [];
    private int _words;
    private ChainGraph _graph = null!;

    /// <summary>Forgets all sets, and reads more as nodes of this graph.</summary>
    internal void Begin(ChainGraph graph)
    {
        (_graph, _words) = (graph, NodeBits.WordsFor(graph.Singles));
        _firsts.Clear();
    }

    /// <summary>Adds a set that is not empty; the first has the number 0.</summary>
    internal void Add(CandidateSet candidates)
    {
        var set = _firsts.Count;
        if (_rows.Length < (set + 1) * _words)
            Array.Resize(ref _rows, (set + 1) * _words * 2);
        var row = _rows.AsSpan(set * _words, _words);
        row.Clear();
        foreach (var candidate in candidates)
        {
            var node = _graph.NodeOf(candidate);
            if (_firsts.Count == set)
                _firsts.Add(node);
            row.Set(node);
        }
    }

    /// <summary>How many candidates of a set are not among the nodes of a row.</summary>
    internal int CountBeside(int set, ReadOnlySpan<ulong> row)
    {
        var its = _rows.AsSpan(set * _words, _words);
        var count = 0;
        for (var word = 0; word < its.Length; word++)
            count += BitOperations.PopCount(its[word] & ~row[word]);
        return count;
    }

    /// <summary>Whether all candidates of a set are among the nodes of a row.</summary>
    internal bool IsWithin(int set, ReadOnlySpan<ulong> row) =>
        row.Has(_firsts[set]) && ((ReadOnlySpan<ulong>)_rows.AsSpan(set * _words, _words)).IsWithin(row);
}
