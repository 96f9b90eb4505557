namespace Companion.Engine.Rules.Chains;

/// <summary>For each node of a graph the nodes that are true where it is, by any number of links. Made again in the same memory.</summary>
internal sealed class ReachedNodes
{
    private ulong[] _rows = [];
    private ulong[] _followed = [];
    private int _words;

    /// <summary>The nodes reached from this one, itself among them.</summary>
    internal ReadOnlySpan<ulong> From(int node) => _rows.AsSpan(node * _words, _words);

    /// <summary>Sets a row to the nodes reached from any of these.</summary>
    internal void From(ReadOnlySpan<ulong> nodes, Span<ulong> row)
    {
        row.Clear();
        while (NodeBits.FirstBeside(nodes, row) is var node && node >= 0)
            row.Add(From(node));
    }

    /// <summary>Reads a graph.</summary>
    internal void Read(ChainGraph graph)
    {
        _words = graph.Words;
        if (_rows.Length < graph.Count * _words)
            (_rows, _followed) = (new ulong[graph.Count * _words * 5 / 4], new ulong[_words * 2]);
        var followed = _followed.AsSpan(0, _words);
        for (var node = 0; node < graph.Count; node++)
        {
            // The first nodes come first, and what they reach is known; so most rows are made of a few others.
            var row = _rows.AsSpan(node * _words, _words);
            graph.Step(node).CopyTo(row);
            row.Set(node);
            followed.Clear();
            followed.Set(node);
            while (NodeBits.FirstBeside(row, followed) is var next && next >= 0)
            {
                if (next < node && From(next).Has(node))
                {
                    From(next).CopyTo(row); // Each reaches the other, and so the same.
                    break;
                }

                if (next < node)
                {
                    row.Add(From(next));
                    followed.Add(From(next));
                }
                else
                {
                    row.Add(graph.Step(next));
                    followed.Set(next);
                }
            }
        }
    }
}
