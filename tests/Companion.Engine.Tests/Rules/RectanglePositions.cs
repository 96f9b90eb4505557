namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions with rectangles of which all corners share two candidates, and cells beside them that have the same others. No cell
/// is filled, and no solution is thought of.
/// </summary>
internal static class RectanglePositions
{
    private static readonly Lazy<IReadOnlyList<Board>> _all = new(() => [.. Make(seed: 10, count: 600)]);

    /// <summary>Several hundred positions.</summary>
    public static IReadOnlyList<Board> All => _all.Value;

    private static IEnumerable<Board> Make(int seed, int count)
    {
        var random = new Random(seed);
        for (var made = 0; made < count; made++)
        {
            var standing = CandidateSet.Of([.. Board.Blank.Candidates.Where(_ => random.NextDouble() < 0.2)]);
            for (var rectangle = 0; rectangle < 4; rectangle++)
                standing = WithRectangle(standing, random);
            yield return Boards.Of([], standing);
        }
    }

    private static CandidateSet WithRectangle(CandidateSet standing, Random random)
    {
        var digits = Digit.All.OrderBy(_ => random.Next()).Take(4).ToList();
        var (pair, others) = (DigitSet.Of(digits[0], digits[1]), DigitSet.Of(digits[2], digits[3]));
        var corners = Corners(random);
        var beside = (corners.First.Peers | corners.Last().Peers) - corners;
        foreach (var cell in beside.Where(_ => random.NextDouble() < 0.15))
            standing = With(cell, others);
        foreach (var cell in corners)
            standing = With(cell, pair | (random.Next(5) switch { 0 => others, 1 or 2 => DigitSet.Of(digits[2]), _ => default }));
        return standing;

        CandidateSet With(Cell cell, DigitSet its) => standing.In(~CellSet.Of(cell)) | CandidateSet.Of(CellSet.Of(cell), its);
    }

    // Two lines of one chute and two across in different ones.
    private static CellSet Corners(Random random)
    {
        var first = 3 * random.Next(3) + random.Next(3);
        var second = first / 3 * 3 + (first + 1 + random.Next(2)) % 3;
        var across = random.Next(9);
        var acrossToo = (across / 3 * 3 + 3 * (1 + random.Next(2)) + random.Next(3)) % 9;
        var places = from line in new[] { first, second } from other in new[] { across, acrossToo } select (line + 1, other + 1);
        var turned = random.Next(2) == 0;
        return CellSet.Of([.. places.Select(place =>
            turned ? Cell.Of(place.Item2, place.Item1) : Cell.Of(place.Item1, place.Item2))]);
    }
}
