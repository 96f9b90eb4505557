namespace Companion.Engine.Rules.Chains;

/// <summary>Candidates of which one must be true: those of a cell, or the places of a digit in a house.</summary>
/// <param name="Candidates">The candidates.</param>
/// <param name="House">The house; null for a cell.</param>
internal readonly record struct Choice(CandidateSet Candidates, House? House)
{
    /// <summary>
    /// Adds every choice on the board of at least so many candidates: the cells, then, if wanted, the houses digit by digit.
    /// </summary>
    internal static void FindAll(Board board, bool houses, int fewest, List<Choice> found)
    {
        foreach (var cell in board.Open)
        {
            if (board[cell].Count >= fewest)
                found.Add(new(CandidateSet.Of(CellSet.Of(cell), board[cell]), null));
        }

        foreach (var house in houses ? HouseSet.All : HouseSet.Empty)
        {
            foreach (var digit in Digit.All)
            {
                var places = board[digit] & house.Cells;
                if (places.Count >= fewest)
                    found.Add(new(CandidateSet.Of(places, digit), house));
            }
        }
    }
}
