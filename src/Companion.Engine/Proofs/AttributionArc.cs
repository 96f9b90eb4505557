namespace Companion.Engine.Proofs;

/// <summary>
/// A deduction as an arc from all that it takes for granted beyond what the start board shows to all that it makes so.
/// </summary>
/// <param name="Deduction">The deduction, as it was found.</param>
/// <param name="Cost">Its cost.</param>
/// <param name="Needs">What must have come about before it; what is so on the start board is left out.</param>
/// <param name="Gives">What has come about after it, what a placed digit eliminates included.</param>
internal sealed record AttributionArc(
    Deduction Deduction, AttributionCost Cost, AttributionTarget Needs, AttributionTarget Gives)
{
    /// <summary>The arc of a deduction.</summary>
    /// <param name="start">The board from which everything is to be proved.</param>
    /// <param name="board">The board on which the deduction was found.</param>
    /// <param name="deduction">The deduction.</param>
    /// <param name="cost">Its cost.</param>
    internal static AttributionArc Of(Board start, Board board, Deduction deduction, double cost)
    {
        var gone = deduction.Removes;
        foreach (var (cell, digit) in deduction.Places)
        {
            gone |= CandidateSet.Of(CellSet.Of(cell), ~DigitSet.Of(digit));
            gone |= CandidateSet.Of(cell.Peers, digit);
        }

        return new(
            deduction,
            new(cost, 1),
            NeedsOf(start, board, deduction),
            new(deduction.Places, gone & start.Candidates));
    }

    // What it rests on, and what the cells of its houses that were filled on the way say: where a named digit was put there, that
    // digit; elsewhere no more than that no named digit can go there. What rests on no absent candidate rests on the filled cells.
    private static AttributionTarget NeedsOf(Board start, Board board, Deduction deduction)
    {
        var (placed, absent) = (CandidateSet.Empty, deduction.RestsOn);
        foreach (var house in deduction.Houses)
        {
            foreach (var cell in house.Cells & board.Filled & start.Open)
            {
                var digit = board.DigitAt(cell)!.Value;
                if (deduction.RestsOn.IsEmpty || deduction.Digits.Contains(digit))
                    placed = placed.With(new(cell, digit));
                else
                    absent |= CandidateSet.Of(CellSet.Of(cell), deduction.Digits);
            }
        }

        return new(placed, absent & start.Candidates);
    }
}
