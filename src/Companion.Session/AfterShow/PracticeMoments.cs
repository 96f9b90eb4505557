using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow;

/// <summary>Positions to practise a rule on from a stored show. Pure.</summary>
public static class PracticeMoments
{
    /// <summary>
    /// For each puzzle of a show its positions, each looked for when it is asked for: first the boards as they stood in the show, where
    /// nothing easier than the rule was open; then those that the puzzle comes by when all that is easier is done first, which a show may
    /// have gone past.
    /// </summary>
    /// <param name="show">The show.</param>
    /// <param name="ladder">The rules, the one in question among them.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>For each puzzle its positions with when each stood in the video; null for those that never did.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static IEnumerable<IEnumerable<(TimeSpan? At, PracticePosition Position)>> Of(
        StoredShow show, Ladder ladder, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(show);
        ArgumentNullException.ThrowIfNull(ladder);
        return ShowPuzzles.Of(show).Select(moments => Stood(moments).Concat(
            PracticePosition.Along(moments[0].State.Grid.Puzzle!.Board, ladder, rule, cancel).Select(position => ((TimeSpan?)null, position))));

        IEnumerable<(TimeSpan?, PracticePosition)> Stood(ImmutableArray<Moment> moments)
        {
            Board? before = null;
            foreach (var moment in moments)
            {
                // Where the grid is wrong nothing that follows from it is worth to be practised.
                if (KnownBoard.Of(moment.State).Value is not { } board || !IsRight(board, moment.State.Grid) || IsSame(board, before))
                    continue;
                before = board;
                if (PracticePosition.On(board, ladder, rule, cancel) is { } position)
                    yield return (VideoTime.Near(show, moment), position);
            }
        }
    }

    private static bool IsRight(Board board, Grid grid) => CellSet.All.All(
        cell => grid.Puzzle!.Solution[cell] is var digit && (board.DigitAt(cell) is { } placed ? placed == digit : board[cell].Contains(digit)));

    private static bool IsSame(Board board, Board? before) => board.Filled == before?.Filled && board.Candidates == before.Candidates;
}
