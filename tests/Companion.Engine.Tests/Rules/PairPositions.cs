namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions in which many cells share a pair of candidates, for rules that turn up too seldom on the way through puzzles. No
/// cell is filled, and the true digits always stand.
/// </summary>
internal static class PairPositions
{
    private static readonly Lazy<IReadOnlyList<Board>> _all = new(() => [.. Make(seed: 8, count: 600)]);

    /// <summary>Several hundred positions.</summary>
    public static IReadOnlyList<Board> All => _all.Value;

    // The cells that hold one of two digits in the solution can hold the other too, and seldom anything else; all other cells
    // anything at all.
    private static IEnumerable<Board> Make(int seed, int count)
    {
        var random = new Random(seed);
        for (var made = 0; made < count; made++)
        {
            var solution = Puzzle.Parse(OwnPuzzles.All[made % OwnPuzzles.All.Count]).Solution;
            var pair = DigitSet.Of([.. Digit.All.OrderBy(_ => random.Next()).Take(2)]);
            yield return Boards.Of([], CandidateSet.Of([.. Board.Blank.Candidates.Where(Stands)]));

            bool Stands(Candidate candidate) => solution.Holds(candidate) || random.NextDouble() < Chance(candidate);

            double Chance(Candidate candidate) =>
                !pair.Contains(solution[candidate.Cell]) ? 0.4 : pair.Contains(candidate.Digit) ? 0.9 : 0.03;
        }
    }
}
