namespace Companion.Engine.Proofs;

/// <summary>
/// Why a digit is, or cannot be, in a cell. For the presenter alone: it tells the solution to whoever asks about the right digit.
/// </summary>
public abstract record CellReason
{
    private CellReason()
    {
    }

    /// <summary>Finds the reason.</summary>
    /// <param name="seen">The board as it stands. What is placed and gone there must agree with the solution.</param>
    /// <param name="bare">The same board with nothing gone but what the digits eliminate.</param>
    /// <param name="solution">The only solution.</param>
    /// <param name="asked">The digit and the cell.</param>
    /// <param name="prove">Proves a target from a board.</param>
    public static CellReason Of(
        Board seen, Board bare, Solution solution, Candidate asked, Func<Board, AttributionTarget, Attribution> prove)
    {
        ArgumentNullException.ThrowIfNull(seen);
        ArgumentNullException.ThrowIfNull(bare);
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(prove);
        var (cell, digit) = asked;
        if (seen.DigitAt(cell) is { } holder)
            return holder == digit ? new Stands(asked, seen.Givens.Contains(cell)) : new Filled(asked, holder);
        if (!bare.Candidates.Contains(asked))
            return new Seen(asked, cell.Peers.First(peer => bare.DigitAt(peer) == digit));
        if (solution.Holds(asked))
            return new Goes(asked, seen, prove(seen, AttributionTarget.Place(asked)));

        // Who asks why a candidate is gone that a mark took out wants to know it from the digits.
        var board = seen.Candidates.Contains(asked) ? seen : bare;
        return new CannotBe(asked, board, prove(board, AttributionTarget.Remove(asked)));
    }

    /// <summary>The digit stands there.</summary>
    /// <param name="Asked">The digit and the cell.</param>
    /// <param name="IsGiven">Whether it was given.</param>
    public sealed record Stands(Candidate Asked, bool IsGiven) : CellReason;

    /// <summary>Another digit stands there.</summary>
    /// <param name="Asked">The digit and the cell.</param>
    /// <param name="Holder">The other digit.</param>
    public sealed record Filled(Candidate Asked, Digit Holder) : CellReason;

    /// <summary>The cell sees the same digit.</summary>
    /// <param name="Asked">The digit and the cell.</param>
    /// <param name="By">The cell that holds it.</param>
    public sealed record Seen(Candidate Asked, Cell By) : CellReason;

    /// <summary>The digit goes there, by the only solution; what it takes to place it.</summary>
    /// <param name="Asked">The digit and the cell.</param>
    /// <param name="Board">The board from which it is proved.</param>
    /// <param name="Attribution">The proof, or that the ladder has none.</param>
    public sealed record Goes(Candidate Asked, Board Board, Attribution Attribution) : CellReason;

    /// <summary>The digit does not go there, by the only solution; what it takes to rule it out.</summary>
    /// <param name="Asked">The digit and the cell.</param>
    /// <param name="Board">The board from which it is proved.</param>
    /// <param name="Attribution">The proof, or that the ladder has none.</param>
    public sealed record CannotBe(Candidate Asked, Board Board, Attribution Attribution) : CellReason;
}
