using Companion.Engine.Search;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions in which every open cell has two candidates, but one that has three. They are made from two full grids: where these
/// differ, a cell can hold the digit of either, so that each digit comes twice in each house; then one cell gets a digit more.
/// </summary>
internal static class GravePositions
{
    private static readonly Lazy<IReadOnlyList<Board>> _all = new(() => [.. Make(seed: 9, count: 600)]);

    /// <summary>
    /// Several hundred; in every other one a candidate is exchanged for another, so that not all digits come twice.
    /// </summary>
    public static IReadOnlyList<Board> All => _all.Value;

    private static IEnumerable<Board> Make(int seed, int count)
    {
        var random = new Random(seed);
        for (var made = 0; made < count;)
        {
            var solution = Puzzle.Parse(OwnPuzzles.All[made % OwnPuzzles.All.Count]).Solution;
            var kept = CellSet.All.Where(_ => random.NextDouble() < 0.4).Select(cell => new Candidate(cell, solution[cell]));
            if (SolutionCounter.Find(Boards.Of(kept, Board.Blank.Candidates)) is not [var one, var other])
                continue;
            var open = CellSet.All.Where(cell => one[cell] != other[cell]).ToList();
            var alike = CellSet.All.Except(open).Select(cell => new Candidate(cell, one[cell])).ToList();
            var grave = CandidateSet.Of(
                [.. open.SelectMany(cell => new Candidate[] { new(cell, one[cell]), new(cell, other[cell]) })]);
            var extras = Boards.Of(alike, Board.Blank.Candidates).Candidates - grave;
            if (extras.IsEmpty)
                continue;
            var standing = grave.With(Any(extras));
            if (made++ % 2 != 0)
            {
                // In one cell of two candidates, another digit for one of them.
                var place = Any(grave.In(extras.Cells));
                standing = standing.Without(place).With(Any(extras.In(CellSet.Of(place.Cell))));
            }

            yield return Boards.Of(alike, standing);
        }

        Candidate Any(CandidateSet candidates) => candidates.ElementAt(random.Next(candidates.Count));
    }
}
