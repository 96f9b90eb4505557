using System.Numerics;

namespace Companion.Engine.Rules.Chains;

/// <summary>Sets of candidates as rows of bits over the candidates that stand. Made again in the same memory.</summary>
internal sealed class CandidateRows
{
    private ulong[] _rows = [];
    private int _words;
    private CandidateNumbers _numbers = null!;

    // Of each set the first candidate, by which most are told apart, and the words of its row in which it has any.
    private Extent[] _extents = [];
    private int _count;

    private readonly record struct Extent(int First, int FirstWord, int EndWord);

    /// <summary>Forgets all sets, and reads more by these numbers.</summary>
    internal void Begin(CandidateNumbers numbers) => (_numbers, _words, _count) = (numbers, NodeBits.WordsFor(numbers.Count), 0);

    /// <summary>Adds a set that is not empty; the first has the number 0.</summary>
    internal void Add(CandidateSet candidates)
    {
        var set = _count++;
        if (_rows.Length < _count * _words)
            Array.Resize(ref _rows, _count * _words * 2);
        if (_extents.Length < _count)
            Array.Resize(ref _extents, _count * 2);
        var row = _rows.AsSpan(set * _words, _words);
        row.Clear();
        var (first, last) = (int.MaxValue, 0);
        foreach (var candidate in candidates)
        {
            var number = _numbers.Of(candidate);
            row.Set(number);
            (first, last) = (Math.Min(first, number), Math.Max(last, number));
        }

        _extents[set] = new(first, first >> 6, (last >> 6) + 1);
    }

    /// <summary>Whether more candidates of a set than so many are not in a row.</summary>
    internal bool HasMoreBeside(int set, ReadOnlySpan<ulong> row, int most)
    {
        var (_, first, end) = _extents[set];
        var its = _rows.AsSpan(set * _words + first, end - first);
        row = row[first..end];
        var count = 0;
        for (var word = 0; word < its.Length && word < row.Length; word++)
            count += BitOperations.PopCount(its[word] & ~row[word]);
        return count > most;
    }

    /// <summary>Whether all candidates of a set are in a row.</summary>
    internal bool IsWithin(int set, ReadOnlySpan<ulong> row) =>
        row.Has(_extents[set].First) && ((ReadOnlySpan<ulong>)_rows.AsSpan(set * _words, _words)).IsWithin(row);
}
