using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>
/// Finds out whether what changed on the screen is what an undo or a redo would change, so that the log tells of one where the
/// presenter made one.
/// </summary>
internal static class TakenBack
{
    // One entry on the screen can be several of ours, as when a program takes marks out beside a digit; more than this is no undo.
    private const int MostSteps = 40;

    /// <summary>The undos or redos, or null where none would do just that.</summary>
    /// <param name="state">The session.</param>
    /// <param name="wanted">What is to stand in each cell that changed.</param>
    /// <param name="withMarks">Whether marks are looked at as well.</param>
    public static ImmutableArray<Command>? For(SessionState state, IReadOnlyDictionary<Cell, CellContent> wanted, bool withMarks)
    {
        if (Steps(state.History.Made) is { } back)
            return [.. Enumerable.Repeat(new Undo(), back)];
        return Steps(state.History.Undone) is { } again ? [.. Enumerable.Repeat(new Redo(), again)] : null;

        int? Steps(IEnumerable<Step> steps)
        {
            var number = 0;
            foreach (var step in steps.Take(MostSteps).TakeWhile(step => step.Grid.Loading == state.Grid.Loading))
            {
                number++;
                if (IsWanted(step.Grid))
                    return number;
            }

            return null;
        }

        bool IsWanted(Grid grid) => CellSet.All.All(cell =>
        {
            var then = CellContent.Of(grid, cell);
            if (!wanted.TryGetValue(cell, out var content))
                return then == CellContent.Of(state.Grid, cell);
            return withMarks ? then == content : then.Digit == content.Digit;
        });
    }
}
