using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Planning;

/// <summary>All orders of all steps towards a rule, one after the other, without a thought of which come to the same.</summary>
internal static class AllOrders
{
    private const int Many = 400;

    /// <summary>The fewest steps after which the rule is open, as far as steps lead on and there are not too many orders.</summary>
    /// <returns>The number, or null where it is more than were tried; and how many were tried.</returns>
    internal static (int? Fewest, int Tried) Fewest(Board now, Rung its, Ladder easier, CancellationToken stop)
    {
        List<Board> boards = [now];
        for (var steps = 0; ; steps++)
        {
            if (boards.Exists(board => its.IsOpenOn(board, stop)))
                return (steps, steps);
            if (boards.Count is 0 or > Many)
                return (null, steps);
            boards = [.. from board in boards from step in easier.Scan(board, stop) select board.Apply(step)];
        }
    }
}
