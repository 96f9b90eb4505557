using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>The strong links of a graph from each node.</summary>
internal sealed class SetLinks
{
    // Each link twice, from either node.
    private readonly List<StrongLinkOfNodes> _ends = [];
    private int[] _first = [];

    /// <summary>The links from this node, which is the first of each.</summary>
    internal ReadOnlySpan<StrongLinkOfNodes> From(int node) =>
        CollectionsMarshal.AsSpan(_ends)[_first[node].._first[node + 1]];

    /// <summary>Reads a graph.</summary>
    internal void Read(ChainGraph graph)
    {
        if (_first.Length < graph.Count + 2)
            _first = new int[graph.Count * 5 / 4 + 2];
        var first = _first.AsSpan(0, graph.Count + 2);
        first.Clear();

        // Counted two places on, so that filling them in moves each start to where it belongs.
        foreach (var link in graph.Links)
        {
            first[link.One + 2]++;
            first[link.Other + 2]++;
        }

        for (var node = 2; node < first.Length; node++)
            first[node] += first[node - 1];
        CollectionsMarshal.SetCount(_ends, graph.Links.Count * 2);
        var ends = CollectionsMarshal.AsSpan(_ends);
        foreach (var link in graph.Links)
        {
            ends[first[link.One + 1]++] = link;
            ends[first[link.Other + 1]++] = link with { One = link.Other, Other = link.One };
        }
    }
}
