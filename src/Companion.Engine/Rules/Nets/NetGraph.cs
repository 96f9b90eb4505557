using System.Runtime.InteropServices;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// A board as nets see it: candidates, numbered in order, and choices, of which each has just one true candidate: the open cells, and
/// each digit that a house still misses. Candidates that share a choice exclude each other. Made again for each board in the same
/// memory.
/// </summary>
internal sealed class NetGraph
{
    /// <summary>How many choices a grid has: its cells, then its houses digit by digit.</summary>
    internal const int Choices = Cell.Count + House.Count * Digit.Count;

    /// <summary>What a candidate counts for in <see cref="Content"/>, beside its number.</summary>
    internal const int One = 1 << 16;

    // The content of a choice that has been made: the cell is filled, the house has the digit.
    private const int Made = int.MaxValue;

    /// <summary>The choices in which each candidate has a part: its cell and its digit in its row, column and block.</summary>
    internal const int ChoicesOfOne = 4;

    /// <summary>The length of the longest row.</summary>
    internal const int MostWords = (Candidate.Count + BitsOfRow - 1) / BitsOfRow * (BitsOfRow / 64);

    // Rows are combined four words at once.
    private const int BitsOfRow = 256;

    private readonly Candidate[] _candidates = new Candidate[Candidate.Count];
    private readonly int[] _choicesOf = new int[Candidate.Count * ChoicesOfOne];
    private readonly int[] _content = new int[Choices];
    private ulong[] _members = [];
    private ulong[] _excluded = [];

    // The choices that each candidate may leave with nothing though several of their candidates stand, and where they end among all.
    private readonly List<int> _across = [];
    private readonly List<int> _endsOfAcross = [];

    /// <summary>How many candidates stand.</summary>
    internal int Count { get; private set; }

    /// <summary>The length of a row of bits, one for each candidate.</summary>
    internal int Words { get; private set; }

    /// <summary>
    /// For each choice how many candidates it has, times <see cref="One"/>, and the sum of their numbers: so the last one left is told
    /// at once. Where it has been made, more than can be left.
    /// </summary>
    internal ReadOnlySpan<int> Content => _content;

    internal Candidate this[int candidate] => _candidates[candidate];

    /// <summary>The candidates of a choice.</summary>
    internal ReadOnlySpan<ulong> Members(int choice) => _members.AsSpan(choice * Words, Words);

    /// <summary>The candidates that are false where this one is true.</summary>
    internal ReadOnlySpan<ulong> Excluded(int candidate) => _excluded.AsSpan(candidate * Words, Words);

    /// <summary>The choices in which a candidate has a part.</summary>
    internal ReadOnlySpan<int> ChoicesOf(int candidate) => _choicesOf.AsSpan(candidate * ChoicesOfOne, ChoicesOfOne);

    /// <summary>
    /// The choices in which a candidate has no part and of which it excludes several candidates: those of its digit in the houses that
    /// cross its own.
    /// </summary>
    internal ReadOnlySpan<int> Across(int candidate)
    {
        var first = candidate == 0 ? 0 : _endsOfAcross[candidate - 1];
        return CollectionsMarshal.AsSpan(_across)[first.._endsOfAcross[candidate]];
    }

    /// <summary>Reads a board.</summary>
    internal void Read(Board board)
    {
        Count = 0;
        foreach (var cell in board.Open)
        {
            foreach (var digit in board[cell])
                Add(new(cell, digit));
        }

        Words = (Count + BitsOfRow - 1) / BitsOfRow * (BitsOfRow / 64);
        ReadContent(board);
        Reserve(ref _members, Choices);
        Reserve(ref _excluded, Count);
        for (var candidate = 0; candidate < Count; candidate++)
        {
            foreach (var choice in ChoicesOf(candidate))
                _members.AsSpan(choice * Words, Words).Set(candidate);
        }

        _across.Clear();
        _endsOfAcross.Clear();
        for (var candidate = 0; candidate < Count; candidate++)
        {
            MakeExcluded(candidate);
            FindAcross(candidate, board);
        }
    }

    private void Add(Candidate candidate)
    {
        var (cell, digit) = candidate;
        _candidates[Count] = candidate;
        var choices = _choicesOf.AsSpan(Count * ChoicesOfOne, ChoicesOfOne);
        choices[0] = cell.Index;
        var next = 1;
        foreach (var house in cell.Houses)
            choices[next++] = ChoiceOf(house, digit);
        Count++;
    }

    private void ReadContent(Board board)
    {
        _content.AsSpan().Fill(Made);
        foreach (var cell in board.Open)
            _content[cell.Index] = 0;
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in board.MissingFrom(house))
                _content[ChoiceOf(house, digit)] = 0;
        }

        for (var candidate = 0; candidate < Count; candidate++)
        {
            foreach (var choice in ChoicesOf(candidate))
                _content[choice] += One + candidate;
        }
    }

    private void MakeExcluded(int candidate)
    {
        var excluded = _excluded.AsSpan(candidate * Words, Words);
        foreach (var choice in ChoicesOf(candidate))
            excluded.Add(Members(choice));
        excluded[candidate >> 6] &= ~(1ul << candidate);
    }

    private void FindAcross(int candidate, Board board)
    {
        var (cell, digit) = _candidates[candidate];
        var seen = board[digit] & cell.Peers;
        foreach (var house in HouseSet.All)
        {
            if (!house.Cells.Contains(cell) && (seen & house.Cells).Count > 1)
                _across.Add(ChoiceOf(house, digit));
        }

        _endsOfAcross.Add(_across.Count);
    }

    private void Reserve(ref ulong[] rows, int count)
    {
        if (rows.Length < count * Words)
            rows = new ulong[count * Words * 5 / 4];
        rows.AsSpan(0, count * Words).Clear();
    }

    private static int ChoiceOf(House house, Digit digit) => Cell.Count + house.Index * Digit.Count + digit.Index;
}
