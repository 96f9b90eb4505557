namespace Companion.Engine.Tests.Rules;

/// <summary>Boards made from their parts, legal or not as a puzzle.</summary>
internal static class Boards
{
    /// <summary>
    /// The board with these digits placed and, of the candidates that they leave, those in <paramref name="standing"/>.
    /// </summary>
    public static Board Of(IEnumerable<Candidate> filled, CandidateSet standing)
    {
        var board = filled.Aggregate(Board.Blank, (board, candidate) => board.Place(candidate));
        return board.Remove(board.Candidates - standing);
    }

    /// <summary>The digits that stand in the filled cells.</summary>
    public static IEnumerable<Candidate> FilledIn(Board board) =>
        board.Filled.Select(cell => new Candidate(cell, board.DigitAt(cell)!.Value));

    /// <summary>The candidates that the filled cells alone leave standing.</summary>
    public static CandidateSet LeftByFilled(Board board) =>
        Of(FilledIn(board), CandidateSet.Of(CellSet.All, DigitSet.All)).Candidates;
}
