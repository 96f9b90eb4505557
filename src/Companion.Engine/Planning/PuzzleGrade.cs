using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// How hard a puzzle is to solve by logic. Two things make it so (R. Pelánek, "Difficulty Rating of Sudoku Puzzles: An Overview and
/// Evaluation", arXiv:1403.7373, 2014): how complex single steps are, and how they depend on each other, which shows in how few are
/// open at a time.
/// </summary>
/// <param name="Steepness">The grade in a word.</param>
/// <param name="Work">
/// How much there is to look at in all, rounded. A round costs what all easier rungs cost, which were looked at in vain, and then
/// the rung's own cost for the step that is found when one is open, half of that when two are, a third when three are and so on, as
/// the open ones become fewer: a thing that is there twice is found in half the time. Null where the ladder does not lead to the
/// solution.
/// </param>
/// <param name="Hardest">The hardest rung that is needed; null where none is, or where the ladder does not lead to the solution.</param>
/// <param name="Rounds">How many rounds there are: the length of the longest line of steps each of which waits for the one before.</param>
/// <param name="Gates">How many rounds have only one way on, without those from which full houses alone lead to the end.</param>
public sealed record PuzzleGrade(Steepness Steepness, int? Work, Rung? Hardest, int Rounds, int Gates)
{
    /// <summary>The grade of a route.</summary>
    /// <param name="route">The route from a puzzle's start.</param>
    public static PuzzleGrade Of(Route route)
    {
        ArgumentNullException.ThrowIfNull(route);
        var ways = route.Rounds.Select(round => round.Ways).ToList();
        var gates = route.Rounds.Count(round => Gate.Is(round.Board, round.Ways));
        if (!route.IsComplete)
            return new(Steepness.Unclimbed, null, null, ways.Count, gates);
        var work = (int)Math.Round(route.Rounds.Zip(ways, (round, count) =>
            CostBelow(round.Rung, route.Ladder) + round.Rung.Cost * SumOfShares(count)).Sum());
        return new(WordFor(work), work, route.Hardest, ways.Count, gates);
    }

    private static Steepness WordFor(int work) => work switch
    {
        <= 150 => Steepness.Flat,
        <= 300 => Steepness.Sloping,
        <= 1500 => Steepness.Steep,
        _ => Steepness.Sheer,
    };

    private static int CostBelow(Rung rung, Ladder ladder) =>
        ladder.Rungs.Where(easier => easier.Place < rung.Place).Sum(easier => easier.Cost);

    // 1 + 1/2 + 1/3 + ...
    private static double SumOfShares(int count) => Enumerable.Range(1, count).Sum(open => 1.0 / open);
}
