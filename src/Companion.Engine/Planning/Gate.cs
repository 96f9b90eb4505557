using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Planning;

/// <summary>
/// What a gate is: a place on the way where there is one way on without a harder rule, and where somebody could look for another. Once
/// full houses alone fill what is left, one of them after the other is all that can be expected, and nothing is a gate any more.
/// </summary>
internal static class Gate
{
    private static readonly IRule[] FullHouses = [new FullHouse()];

    /// <summary>Whether a board is one.</summary>
    /// <param name="board">The board; it has a solution.</param>
    /// <param name="ways">How many ways on there are, see <see cref="PlannedStep.Ways"/> and <see cref="Round.Ways"/>.</param>
    internal static bool Is(Board board, int ways) => ways == 1 && !Fixpoint.Of(board, FullHouses).IsFull;
}
