using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Boards;

/// <summary>The seen board less every candidate removed by a deduction already shown, spoken or used.</summary>
public static class KnownBoard
{
    /// <summary>The known board of a state, or every reason why there is none.</summary>
    public static Reading<Board> Of(SessionState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Of(state.Grid, state.Writing, state.Used);
    }

    /// <summary>The known board of a grid, or every reason why there is none.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="writing">Cells whose lists are being written and say nothing yet.</param>
    /// <param name="used">The deductions shown, spoken or used, in order.</param>
    public static Reading<Board> Of(Grid grid, CellSet writing, IEnumerable<Grounded> used)
    {
        var draft = SeenBoard.Draft(grid, writing);
        var seen = Board.Read(draft);
        if (!seen.IsGood)
            return seen;
        var removed = CandidateSet.Empty;
        foreach (var step in Taken(grid, seen.Value, used))
            removed |= step.Gone;
        return removed.IsEmpty ? seen : Board.Read(draft with { Removed = draft.Removed | removed });
    }

    /// <summary>
    /// The used deductions that still hold, in order, with what each takes out. One whose support came back by an undo takes out
    /// nothing, and neither does what rests on it.
    /// </summary>
    /// <param name="grid">The grid.</param>
    /// <param name="seen">Its seen board.</param>
    /// <param name="used">The deductions shown, spoken or used, in order.</param>
    public static IEnumerable<(Grounded Used, CandidateSet Gone)> Taken(Grid grid, Board seen, IEnumerable<Grounded> used)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(seen);
        ArgumentNullException.ThrowIfNull(used);
        var standing = seen.Candidates;
        foreach (var step in used)
        {
            var gone = step.Deduction.Removes & standing;
            if (gone.IsEmpty || !step.HoldsOn(grid, standing))
                continue;
            standing -= gone;
            yield return (step, gone);
        }
    }
}
