namespace Companion.Engine.Rules.Chains;

/// <summary>The candidates that stand on a board, numbered in order from 0. Made again for each board in the same memory.</summary>
internal sealed class CandidateNumbers
{
    private const int None = -1;

    private readonly int[] _numbers = new int[Candidate.Count];

    /// <summary>How many there are.</summary>
    internal int Count { get; private set; }

    /// <summary>The number of a candidate; -1 where it does not stand.</summary>
    internal int Of(Candidate candidate) => _numbers[candidate.Cell.Index * Digit.Count + candidate.Digit.Index];

    /// <summary>Reads a board.</summary>
    internal void Read(Board board)
    {
        Count = 0;
        Array.Fill(_numbers, None);
        foreach (var cell in board.Open)
        {
            foreach (var digit in board[cell])
                _numbers[cell.Index * Digit.Count + digit.Index] = Count++;
        }
    }
}
