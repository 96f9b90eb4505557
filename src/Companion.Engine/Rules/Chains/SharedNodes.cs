using System.Numerics;

namespace Companion.Engine.Rules.Chains;

/// <summary>Walks the nodes that are in both of two rows, in order, without allocating.</summary>
internal ref struct SharedNodes(ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> other)
{
    private readonly ReadOnlySpan<ulong> _row = row;
    private readonly ReadOnlySpan<ulong> _other = other;
    private int _word = -1;
    private ulong _rest;

    /// <summary>The node the walk is at.</summary>
    public int Current { get; private set; }

    /// <summary>This, for the foreach statement.</summary>
    public readonly SharedNodes GetEnumerator() => this;

    /// <summary>Goes to the next node.</summary>
    public bool MoveNext()
    {
        while (_rest == 0)
        {
            if (++_word == _row.Length)
                return false;
            _rest = _row[_word] & _other[_word];
        }

        Current = _word << 6 | BitOperations.TrailingZeroCount(_rest);
        _rest &= _rest - 1;
        return true;
    }
}
