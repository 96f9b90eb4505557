using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Companion.Engine.Rules.Chains;

/// <summary>Sets of nodes as rows of bits: bit n of a row for node n.</summary>
internal static class NodeBits
{
    // Rows are whole vectors, so that four words are combined at once.
    private const int WordsOfVector = 4;

    /// <summary>The length of a row for so many nodes.</summary>
    internal static int WordsFor(int nodes) => (nodes + 255) / 256 * WordsOfVector;

    internal static bool Has(this ReadOnlySpan<ulong> row, int node) => (row[node >> 6] >> node & 1) != 0;

    internal static void Set(this Span<ulong> row, int node) => row[node >> 6] |= 1ul << node;

    internal static void Add(this Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        ref var its = ref MemoryMarshal.GetReference(row);
        ref var others = ref MemoryMarshal.GetReference(other);
        for (nuint word = 0; word < (nuint)row.Length; word += WordsOfVector)
            (Vector256.LoadUnsafe(ref its, word) | Vector256.LoadUnsafe(ref others, word)).StoreUnsafe(ref its, word);
    }

    /// <summary>The first node of a row that is not in the other; -1 where there is none.</summary>
    internal static int FirstBeside(ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> other)
    {
        for (var word = 0; word < row.Length; word++)
        {
            if ((row[word] & ~other[word]) is var rest && rest != 0)
                return word << 6 | BitOperations.TrailingZeroCount(rest);
        }

        return -1;
    }

    /// <summary>Leaves the nodes that are in the other row too.</summary>
    internal static void Intersect(this Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        ref var its = ref MemoryMarshal.GetReference(row);
        ref var others = ref MemoryMarshal.GetReference(other);
        for (nuint word = 0; word < (nuint)row.Length; word += WordsOfVector)
            (Vector256.LoadUnsafe(ref its, word) & Vector256.LoadUnsafe(ref others, word)).StoreUnsafe(ref its, word);
    }

    internal static bool Overlaps(this ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> other)
    {
        ref var its = ref MemoryMarshal.GetReference(row);
        ref var others = ref MemoryMarshal.GetReference(other);
        for (nuint word = 0; word < (nuint)row.Length; word += WordsOfVector)
        {
            if ((Vector256.LoadUnsafe(ref its, word) & Vector256.LoadUnsafe(ref others, word)) != Vector256<ulong>.Zero)
                return true;
        }

        return false;
    }

    /// <summary>Whether every node of the row is in the other, which may be longer.</summary>
    internal static bool IsWithin(this ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> other)
    {
        ref var its = ref MemoryMarshal.GetReference(row);
        ref var others = ref MemoryMarshal.GetReference(other);
        for (nuint word = 0; word < (nuint)row.Length; word += WordsOfVector)
        {
            if (Vector256.AndNot(Vector256.LoadUnsafe(ref its, word), Vector256.LoadUnsafe(ref others, word)) != Vector256<ulong>.Zero)
                return false;
        }

        return true;
    }
}
