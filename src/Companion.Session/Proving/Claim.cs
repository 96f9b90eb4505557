using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.Entries;
using Companion.Session.Events;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Session.Proving;

/// <summary>What an entry says that could not be told from the screen before it.</summary>
/// <param name="Step">The entry.</param>
/// <param name="Target">The digits it placed and the candidates it took out.</param>
/// <param name="Before">The seen board before it; null where that holds a slip, so that nothing is to be proved from it.</param>
/// <param name="IsWrong">Whether it disagrees with the only solution. Watch tells of it.</param>
public sealed record Claim(Step Step, AttributionTarget Target, Board? Before, bool IsWrong)
{
    /// <summary>Whether a proof of it is worth looking for.</summary>
    public bool IsProvable => Before is not null && !IsWrong;

    /// <summary>The claims of the entries that stand, the last first.</summary>
    /// <param name="state">The state. A list that is being written does not claim anything yet.</param>
    /// <param name="last">How many entries are looked at; all by default.</param>
    public static IEnumerable<Claim> Of(SessionState state, int last = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(state);
        var after = (state.Grid, state.Writing);
        foreach (var step in state.History.Made.Take(last))
        {
            // A list counts as finished before an entry elsewhere, not by that entry.
            var goesOn = step.Entry is PuzzleLoaded
                ? CellSet.Empty
                : step.Writing & EntryEffects.Apply(step.Grid, step.Writing, step.Entry).Writing;
            var before = (step.Grid, goesOn);
            if (step.Entry is not PuzzleLoaded && Of(step, before, after) is { } claim)
                yield return claim;
            after = before;
        }
    }

    /// <summary>Whether a board holds nothing but what the solution holds, and has lost none of it.</summary>
    internal static bool Agrees(Board board, Solution solution) => CellSet.All.All(cell =>
        board.DigitAt(cell) is { } digit ? solution[cell] == digit : board.Candidates.Contains(new(cell, solution[cell])));

    private static Claim? Of(Step step, (Grid Grid, CellSet Writing) before, (Grid Grid, CellSet Writing) after)
    {
        var change = Change.Between(before, after);
        if (change.IsEmpty)
            return null;

        // A digit that replaces another is proved without the one that stood there.
        var replaced = change.Places.Cells & before.Grid.Placed.Cells;
        var seen = SeenBoard.Of(replaced.IsEmpty ? before.Grid : before.Grid.Erase(replaced), before.Writing).Value;
        var target = new AttributionTarget(change.Places, seen is null ? change.Removes : change.Removes & seen.Candidates);
        if (target == default)
            return null;
        var solution = before.Grid.Puzzle!.Solution;
        var isWrong = !target.Places.All(solution.Holds) || target.Removes.Any(solution.Holds);
        return new(step, target, seen is not null && Agrees(seen, solution) ? seen : null, isWrong);
    }
}
