namespace Companion.Engine.Tests.Proofs;

/// <summary>
/// Positions made from a full grid, so that every rule turns up often: some cells filled, and false candidates struck at random.
/// True digits always stand, as in a solve without mistakes.
/// </summary>
internal static class TruePositions
{
    // The solution of the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach".
    private const string Full = "483921657967345821251876493548132976729564138136798245372689514814253769695417382";

    internal static Digit TrueDigit(Cell cell) => Digit.Of(Full[cell.Index] - '0');

    /// <summary>The full grid with these cells open.</summary>
    internal static Board Opened(CellSet open) =>
        Board.Parse(string.Concat(CellSet.All.Select(cell => open.Contains(cell) ? "." : TrueDigit(cell).ToString())));

    internal static IEnumerable<Board> Of(int count, int seed)
    {
        var random = new Random(seed);
        for (var made = 0; made < count; made++)
        {
            var (filled, struck) = (random.Next(10, 60) / 100.0, random.Next(0, 80) / 100.0);
            var board = Opened(CellSet.Of([.. CellSet.All.Where(_ => random.NextDouble() >= filled)]));
            yield return board.Remove(CandidateSet.Of([.. board.Candidates.Where(candidate =>
                candidate.Digit != TrueDigit(candidate.Cell) && random.NextDouble() < struck)]));
        }
    }
}
