namespace Companion.Engine.Proofs;

/// <summary>What is to be proved: digits that are to be placed and candidates that are to go. The default value wants nothing.</summary>
/// <param name="Places">The digits that are to stand in their cells.</param>
/// <param name="Removes">The candidates that are to go.</param>
public readonly record struct AttributionTarget(CandidateSet Places, CandidateSet Removes)
{
    /// <summary>One digit that is to be placed.</summary>
    public static AttributionTarget Place(Candidate candidate) => new(CandidateSet.Of(candidate), CandidateSet.Empty);

    /// <summary>One candidate that is to go.</summary>
    public static AttributionTarget Remove(Candidate candidate) => new(CandidateSet.Empty, CandidateSet.Of(candidate));

    /// <summary>Whether all of it is so on a board; a candidate is not gone where its digit was placed.</summary>
    /// <param name="board">The board.</param>
    public bool IsReachedOn(Board board)
    {
        ArgumentNullException.ThrowIfNull(board);
        if (!(Removes & board.Candidates).IsEmpty)
            return false;
        foreach (var (cell, digit) in Places)
        {
            if (board.DigitAt(cell) != digit)
                return false;
        }

        foreach (var (cell, digit) in Removes.In(board.Filled))
        {
            if (board.DigitAt(cell) == digit)
                return false;
        }

        return true;
    }

    /// <summary>The same target with more in it.</summary>
    internal AttributionTarget And(AttributionTarget other) => new(Places | other.Places, Removes | other.Removes);
}
