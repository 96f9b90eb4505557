using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// Looks for the fewest steps until a rule comes open: on all boards that one easier deduction leads to, then on those of two, and so
/// on, each board once, in whatever order its steps are made. A step is all that follows from an instance which an easier rule finds.
/// So many boards are looked at and no more: it always comes to the same, and is soon done.
/// </summary>
/// <param name="its">The rung of the rule.</param>
/// <param name="easier">The rules whose deductions are steps.</param>
/// <param name="cancel">Stops it.</param>
internal sealed class ShortestWay(Rung its, Ladder easier, CancellationToken cancel)
{
    // By so much fewer where rules search along links.
    private const int Fewer = 20;

    private readonly HashSet<CandidateSet> _seen = [];

    /// <summary>On how many boards the rule is looked for, where rules are quick.</summary>
    internal int MostBoards { get; init; } = 6000;

    /// <summary>On how many boards all steps are looked for, where rules are quick.</summary>
    internal int MostScans { get; init; } = 300;

    /// <summary>Looks for a way that is shorter than one that is known.</summary>
    /// <param name="now">The board, on which the rule is not open.</param>
    /// <param name="known">The steps of the known way, 1 or more.</param>
    /// <returns>
    /// A way of the fewest steps there are; or null and how many there are at least, 1 to <paramref name="known"/>.
    /// </returns>
    internal (Way? Shortest, int AtLeast) Below(Board now, int known)
    {
        var effort = easier.Rules.Append(its.Rule).Max(each => each.Effort);
        if (effort == Effort.LastResort)
            return (null, 1); // it may find less than all
        var (boards, scans) = effort == Effort.Search ? (MostBoards / Fewer, MostScans / Fewer) : (MostBoards, MostScans);
        _seen.Add(now.Candidates);
        List<Way> ways = [new(now, null, null)];
        for (var steps = 1; steps < known; steps++)
        {
            if ((scans -= ways.Count) < 0)
                return (null, steps);
            List<Way> longer = [];
            foreach (var way in ways.SelectMany(OneStepOn))
            {
                if (its.IsOpenOn(way.Board, cancel))
                    return (way, steps);
                if (--boards == 0)
                    return (null, steps);
                longer.Add(way);
            }

            ways = longer;
        }

        return (null, known);
    }

    // A digit that is placed leaves its cell without candidates, so that they tell boards apart.
    private IEnumerable<Way> OneStepOn(Way way) =>
        from step in easier.Scan(way.Board, cancel)
        let board = way.Board.Apply(step)
        where _seen.Add(board.Candidates)
        select new Way(board, step, way);
}
