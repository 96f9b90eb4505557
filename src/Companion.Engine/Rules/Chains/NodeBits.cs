namespace Companion.Engine.Rules.Chains;

/// <summary>Sets of nodes as rows of bits: bit n of a row for node n.</summary>
internal static class NodeBits
{
    internal static bool Has(this ReadOnlySpan<ulong> row, int node) => (row[node >> 6] >> node & 1) != 0;

    internal static void Set(this Span<ulong> row, int node) => row[node >> 6] |= 1ul << node;

    internal static void Add(this Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        for (var word = 0; word < row.Length; word++)
            row[word] |= other[word];
    }

    internal static bool Overlaps(this ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> other)
    {
        for (var word = 0; word < row.Length; word++)
        {
            if ((row[word] & other[word]) != 0)
                return true;
        }

        return false;
    }
}
